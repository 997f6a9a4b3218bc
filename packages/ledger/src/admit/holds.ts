import { calibrationLapse, usualInterval } from '@bayledger/reckoning/torque/calibration'
import type { Draft } from '../entry.ts'
import type { Hold, WrenchDoubt } from '../hold.ts'
import { driveDoubt } from '../questions/drive-clock.ts'
import type { OrderState } from '../state.ts'
import type { AdmitFacts, WrenchFacts } from './facts.ts'

/**
 * Holds for a true fact whose writer could not know better. A torque round is a fact, since the nuts were turned: if the
 * register doubts its wrench, the round is kept and the road stays shut. An entry is kept however wrong its device's
 * clock is, and the report waits until a person has settled the time. A drive is kept with its minutes as they were typed;
 * where the clock contradicts them, they prove nothing until a person has settled them.
 */
export const holdsFor = (state: OrderState, draft: Draft, facts: AdmitFacts): Hold[] => [
  ...wrenchHold(draft, facts),
  ...clockHold(draft, facts),
  ...driveHold(state, draft, facts),
]

const driveHold = (state: OrderState, draft: Draft, { now }: AdmitFacts): Hold[] => {
  if (draft.kind !== 'drive.done') return []
  const values = driveDoubt(state, draft.payload, { writtenAt: draft.writtenAt, now })
  return values === null ? [] : [{ code: 'drive-minutes-doubtful', gate: 'proof', wheel: null, values }]
}

const wrenchHold = (draft: Draft, facts: AdmitFacts): Hold[] => {
  if (draft.kind !== 'studs.torqued' && draft.kind !== 'torque.checked') return []
  const { wheel, wrench } = draft.payload
  const known = facts.wrenches.get(wrench.instrumentId)
  const values = known ? doubtOf(wrench.code, known, facts.now.slice(0, 10)) : null
  return values === null ? [] : [{ code: 'wrench-doubtful', gate: 'road', wheel, values }]
}

const doubtOf = (wrench: string, known: WrenchFacts, today: string): WrenchDoubt | null => {
  const lapse = calibrationLapse(known, today)
  if (lapse === 'day') return { why: 'day', wrench, dueOn: known.dueOn }
  if (known.quarantined) return { why: 'quarantined', wrench }
  return lapse === 'cycles'
    ? { why: 'cycles', wrench, cycles: known.cycles, dueAt: usualInterval.cycles }
    : null
}

const minuteMs = 60_000

/**
 * How far a device's time may be from the time of receipt. A clock can run a little ahead; a tablet without a network
 * may send what it wrote over a long weekend (our own bounds, no source).
 */
export const usualClock = { aheadMs: 10 * minuteMs, behindMs: 4 * 24 * 60 * minuteMs } as const

const clockHold = ({ writtenBy, writtenAt }: Draft, { now }: AdmitFacts): Hold[] => {
  const aheadMs = Date.parse(writtenAt) - Date.parse(now)
  return writtenBy.kind !== 'staff' || (aheadMs <= usualClock.aheadMs && -aheadMs <= usualClock.behindMs)
    ? []
    : [
        {
          code: 'device-clock-doubtful',
          gate: 'seal',
          wheel: null,
          values: { writtenAt, receivedAt: now },
        },
      ]
}
