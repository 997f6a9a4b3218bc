import { digestOf } from '@bayledger/ledger/digests'
import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import { missingOnArrival, readySteps, torquedBy } from '@bayledger/ledger/questions/gates'
import { lastOdometer } from '@bayledger/ledger/questions/odometer'
import { whyNot } from '@bayledger/ledger/questions/why-not'
import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Step } from '@bayledger/reckoning/step'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { ReadOrder } from '../../apps/web/src/ledger/order.ts'
import {
  arrivalOf,
  storedAsReceived,
  surroundings,
  tireOf,
} from '../../packages/ledger/test-support/one-sensor-job.ts'
import { wordsOf } from '../../packages/ledger/test-support/seeded-ids.ts'
import { gauge } from '../../packages/ledger/test-support/shop.ts'
import { closingOf } from '../../packages/ledger/test-support/step-payload.ts'
import type { Chance } from './chance.ts'
import { type PersonName, people } from './shop-tables.ts'

/** Something that a person writes. `second`: whose PIN it takes. */
export type Work = {
  [K in Kind]: {
    readonly kind: K
    readonly payload: PayloadOf<K>
    readonly second?: PersonName
    readonly restsOn?: readonly string[]
  }
}[Kind]

/** What a technician would do next with an order as their tablet shows it; `null` where nothing is to be done. */
export const bayWork = (
  { state, history }: Pick<ReadOrder, 'state' | 'history'>,
  person: PersonName,
  chance: Chance,
): Work | null => {
  if (!state.authority.look || !state.sheet) return null
  if (chance.happens(0.12)) return besides(state, person, chance)
  const missing = missingOnArrival(state)
  const [first] = missing
  if (first !== undefined) return checkArrival(missing[chance.below(missing.length)] ?? first, chance)
  if (!state.diagnosis || state.diagnosis.outdated)
    return { kind: 'diagnosis.issued', payload: findingsOn(state, history) }
  if (!state.diagnosis.confirmed) {
    const diagnosisId = state.diagnosis.written.entryId
    return {
      kind: 'diagnosis.confirmed',
      payload: { diagnosisId, verdict: { agrees: true } },
      restsOn: [diagnosisId],
    }
  }
  if (chance.happens(0.04)) return anyStep(state, person, chance)
  const ready = readySteps(state).filter((step) => whyNot(state, step) === null)
  const step = ready[chance.below(ready.length)]
  return step ? closeStep(state, step, person, chance) : null
}

const findingsOn = (state: OrderState, history: ReadOrder['history']): PayloadOf<'diagnosis.issued'> => {
  const evidence = evidenceOf(state, history)
  return { evidence, diagnosis: diagnose(evidence), evidenceDigest: digestOf(evidence) }
}

type Missing = ReturnType<typeof missingOnArrival>[number]

const checkArrival = ({ code, wheel }: Missing, chance: Chance): Work | null => {
  const at = wheel ?? 'LF'
  switch (code) {
    case 'surroundings':
      return { kind: 'surroundings.recorded', payload: surroundings }
    case 'warning-light':
      return {
        kind: 'telltale.observed',
        payload: {
          phase: 'arrival',
          stepKey: null,
          lampCheck: 'lights',
          behavior: 'flash-then-solid',
          timed: null,
        },
      }
    case 'gauge':
    case 'sensor':
      return { kind: 'wheel.checked', payload: gauged(at, chance) }
    case 'tire':
      return { kind: 'tire.inspected', payload: tireOf(at) }
    case 'control-module':
      return { kind: 'module.read', payload: storedAsReceived }
    default:
      return null
  }
}

/** Two gauges seldom agree to the tenth: what two people read of one wheel may differ. */
const gauged = (wheel: WheelPosition, chance: Chance): PayloadOf<'wheel.checked'> => {
  const reading = arrivalOf(wheel)
  const psi = (reading.gauge?.pressure.value ?? 33) + (chance.happens(0.1) ? 0.5 : 0)
  return { ...reading, gauge: { pressure: { value: psi, unit: 'psi' }, instrument: gauge } }
}

/** A step that somebody takes out of turn: the tablet or the server refuses most of these. */
const anyStep = (state: OrderState, person: PersonName, chance: Chance): Work | null => {
  const steps = state.plan?.plan.steps ?? []
  const step = steps[chance.below(steps.length)]
  return step ? closeStep(state, step, person, chance) : null
}

const closeStep = (state: OrderState, step: Step, person: PersonName, chance: Chance): Work | null => {
  if (step.closedBy === 'drive.done' && chance.happens(0.5))
    return { kind: 'drive.left', payload: { stepKey: step.stepKey, odometerOut: odometerNow(state) } }
  const work = closingOf(state, step)
  if (work.kind === 'torque.checked') {
    const torqued = torquedBy(state.work[work.payload.wheel]).map((author) =>
      author.kind === 'staff' ? author.staffId : '',
    )
    const free = checkers.filter((name) => !torqued.includes(people[name].id))
    const second = free[chance.below(free.length)]
    return second ? { ...work, second } : null
  }
  if (work.kind === 'sealant.purged') return { ...work, second: person === 'lead' ? 'technician' : 'lead' }
  return work
}

const odometerNow = (state: OrderState) =>
  lastOdometer(state)?.distance ?? { value: 88_141, unit: 'mi' as const }

const checkers: readonly PersonName[] = ['technician', 'colleague', 'lead']

/** What comes between: a remark, a picture, a second look, something not right, a withdrawal. */
const besides = (state: OrderState, person: PersonName, chance: Chance): Work | null => {
  const wheel = chance.pick(readingOrder)
  switch (chance.below(12)) {
    case 0:
    case 1:
    case 2:
      return { kind: 'note.added', payload: { words: wordsOf('note') } }
    case 3:
    case 4:
      return {
        kind: 'photo.attached',
        payload: {
          wheel,
          stepKey: null,
          subject: 'arrival',
          digest: wordsOf(`photo ${chance.word()}`),
          byteLength: 1 + chance.below(9_000_000),
          picture: null,
        },
      }
    case 5:
      return state.plan ? null : { kind: 'wheel.checked', payload: gauged(wheel, chance) }
    case 6:
      return chance.happens(0.2)
        ? { kind: 'trouble.found', payload: { stepKey: null, wheel, what: 'other', words: null } }
        : null
    default:
      return withdraw(state, person, chance)
  }
}

/** Takes back an entry of one's own that was just written, or withdraws any of the last ones. */
const withdraw = (state: OrderState, person: PersonName, chance: Chance): Work | null => {
  const { id } = people[person]
  const last = state.marks.slice(-4).filter(({ struck }) => struck === null)
  const mark = last[chance.below(last.length)]
  if (!mark) return null
  const isOwn = mark.by.kind === 'staff' && mark.by.staffId === id
  const takesTwo = ['wheel.removed', 'sensor.broken', 'studs.torqued', 'torque.checked'].includes(mark.kind)
  const payload = {
    entryId: mark.entryId,
    reason: isOwn && !takesTwo ? ('undone' as const) : ('wrong-value' as const),
    words: null,
    secondPerson: null,
  }
  const restsOn = [mark.entryId]
  return takesTwo
    ? { kind: 'entry.struck', payload, restsOn, second: person === 'lead' ? 'technician' : 'lead' }
    : { kind: 'entry.struck', payload, restsOn }
}
