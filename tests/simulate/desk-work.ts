import { unansweredBundles } from '@bayledger/ledger/questions/answers'
import { openConflicts } from '@bayledger/ledger/questions/conflicts'
import { estimateIsMissing } from '@bayledger/ledger/questions/estimate-is-missing'
import { sealGate } from '@bayledger/ledger/questions/gates'
import { lastOdometer } from '@bayledger/ledger/questions/odometer'
import type { OrderState } from '@bayledger/ledger/state'
import { seal } from '../../packages/ledger/test-support/money.ts'
import {
  answersOf,
  decisionOf,
  estimateOf,
  handBack,
  opening,
  owner,
} from '../../packages/ledger/test-support/one-sensor-job.ts'
import { wordsOf } from '../../packages/ledger/test-support/seeded-ids.ts'
import type { Work } from './bay-work.ts'
import type { Chance } from './chance.ts'
import { people, sheet } from './shop-tables.ts'

/** The report is sealed by the server itself, when the desk asks for it. */
export type DeskWork = Work | { readonly kind: 'ask-for-the-report' }

/** How every order begins. */
export const openOrder: Work = { kind: 'order.opened', payload: { ...opening, odometer: null } }

/** What an advisor would do next with an order as the desk shows it; `null` where it is nobody's move here. */
export const deskWork = (state: OrderState, chance: Chance): DeskWork | null => {
  if (chance.happens(0.1)) return besides(state, chance)
  if (!state.complaint)
    return {
      kind: 'complaint.recorded',
      payload: { words: wordsOf('complaint'), reportedLight: 'flash-then-solid', events: [] },
    }
  if (!state.sheet) return { kind: 'sheet.chosen', payload: { sheet } }
  if (!state.authority.look)
    return {
      kind: 'authority.given',
      payload: {
        to: ['look', 'drive'],
        by: owner,
        channel: 'in-person',
        money: seal({ lookFeeCents: 5_200 }),
        lookFee: 'charged',
      },
    }
  return settle(state) ?? sell(state, chance) ?? finish(state)
}

/** Where two people recorded a fact differently, one of them is withdrawn. */
const settle = (state: OrderState): Work | null => {
  const [conflict] = openConflicts(state)
  const record = conflict?.records[0]
  const hold = state.holds.find((one) => 'code' in one && one.code === 'device-clock-doubtful')
  if (hold)
    return {
      kind: 'hold.settled',
      payload: { entryId: hold.written.entryId, words: wordsOf('why') },
    }
  return record
    ? {
        kind: 'entry.struck',
        payload: { entryId: record.entryId, reason: 'wrong-value', words: null, secondPerson: null },
        restsOn: [record.entryId],
      }
    : null
}

const sell = (state: OrderState, chance: Chance): Work | null => {
  const pen = { state: () => state }
  if (estimateIsMissing(state)) return { kind: 'estimate.issued', payload: estimateOf(pen) }
  const newest = state.estimates.at(-1)
  if (!newest) return null
  if (newest.shown.length === 0)
    return {
      kind: 'estimate.shown',
      payload: { revision: newest.scope.revision, channel: 'in-person', linkId: null },
    }
  const open = unansweredBundles(state).map(({ bundleKey }) => bundleKey)
  if (open.length === 0) return null
  const answers = answersOf(pen, chance.happens(0.93) ? 'authorized' : 'declined')
  return {
    kind: 'estimate.decided',
    payload: decisionOf(
      pen,
      answers.filter(({ bundleKey }) => open.includes(bundleKey)),
    ),
  }
}

const finish = (state: OrderState): DeskWork | null => {
  if (state.handedBack || state.ended) return null
  if (state.reports.length > 0)
    return {
      kind: 'order.handed_back',
      payload: { ...handBack, odometer: lastOdometer(state)?.distance ?? null },
    }
  return state.plan && sealGate(state).length === 0 ? { kind: 'ask-for-the-report' } : null
}

/** What comes between at a desk. */
const besides = (state: OrderState, chance: Chance): Work | null => {
  switch (chance.below(6)) {
    case 0:
      return { kind: 'order.assigned', payload: { staffId: people.technician.id, bay: 1 + chance.below(4) } }
    case 1:
      return { kind: 'contact.made', payload: { channel: 'telephone', outcome: 'reached', words: null } }
    case 2:
      return {
        kind: 'stay.changed',
        payload: { waitsHere: chance.happens(0.5), promisedAt: '2026-01-12T20:00:00.000Z' },
      }
    case 3:
      return { kind: 'note.added', payload: { words: wordsOf('note') } }
    case 4: {
      const last = state.marks.slice(-6).filter(({ struck }) => struck === null)
      const mark = last[chance.below(last.length)]
      return mark
        ? {
            kind: 'entry.struck',
            payload: { entryId: mark.entryId, reason: 'wrong-value', words: null, secondPerson: null },
            restsOn: [mark.entryId],
          }
        : null
    }
    default:
      return chance.happens(0.02)
        ? { kind: 'order.withdrawn', payload: { reason: 'customer', words: wordsOf('why') } }
        : null
  }
}
