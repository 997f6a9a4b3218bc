import type { Step } from '@bayledger/reckoning/step'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  answersOf,
  arrivalOf,
  decisionOf,
  findingsOf,
  oneSensorJob,
  stages,
  workUntil,
} from '../../test-support/one-sensor-job.ts'
import { type OrderPen, orderPen } from '../../test-support/order-pen.ts'
import { commands, tryCommand } from '../../test-support/random-order.ts'
import {
  bay,
  before,
  changedEstimate,
  dearer,
  desk,
  replanned,
  unverified,
} from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { agreedBy, colleague, factsAt, lead, type Person, technician } from '../../test-support/shop.ts'
import { closingOf } from '../../test-support/step-payload.ts'
import { admit } from '../admit.ts'
import { provenBy } from '../ledger-pen.ts'
import type { OrderState } from '../state.ts'
import { torquedBy } from './gates.ts'
import { whyNot } from './why-not.ts'

/** Somebody who has not torqued this wheel, so that nothing about the person is in the way. */
const personFor = (state: OrderState, { wheel }: Step): Person => {
  const doers = (wheel === null ? [] : torquedBy(state.work[wheel])).map((doer) =>
    doer.kind === 'staff' ? doer.staffId : '',
  )
  return [lead, technician, colleague].find(({ id }) => !doers.includes(id)) ?? lead
}

/** Reasons that lie in what is recorded, not in the order's state. */
const aboutTheEntry: ReadonlySet<string> = new Set([
  'SENSOR_ID_TAKEN',
  'SENSOR_ID_DIFFERS',
  'SECOND_PERSON_IS_DOER',
])

/** Compares both answers for every step of the plan in force; gives the codes that came up. */
const compared = (pen: OrderPen): string[] => {
  const state = pen.state()
  // A relearn is well formed where it is done by the sheet's own method.
  const steps = (state.plan?.plan.steps ?? []).filter(
    ({ closedBy }) => closedBy !== 'relearn.done' || state.sheet !== null,
  )
  return steps.map((step) => {
    const { kind, payload } = closingOf(state, step)
    const by = personFor(state, step)
    const said = kind === 'torque.checked' ? { ...payload, checkedBy: agreedBy(by) } : payload
    const draft = pen.draft(kind, said, { by })
    const facts = factsAt(draft.writtenAt, draft.writtenBy, { secondPersons: provenBy(draft) })
    const verdict = admit(state, draft, facts)
    const shut = whyNot(state, step)
    const refused = verdict.admitted || aboutTheEntry.has(verdict.code) ? null : verdict
    expect(shut, step.stepKey).toEqual(refused)
    return shut?.code ?? 'open'
  })
}

/** The customer has taken the work back, and the plan does not know it yet. */
const declined = (): OrderPen => {
  const pen = before('RR.tire.open')
  pen.write('estimate.issued', changedEstimate(pen, dearer), desk)
  pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
  return pen
}

/** A finding holds the wheel: its sensor was read once only. */
const asked = (): OrderPen => {
  const pen = before('RR.wheel.off')
  pen.write('wheel.checked', arrivalOf('RR', { sensor: { answer: 'silent', tries: 1 } }), bay)
  pen.write('diagnosis.issued', findingsOf(pen), bay)
  pen.write('wheel.checked', arrivalOf('RR'), bay)
  return pen
}

/** The confirmation of the torque was set aside, and the wheel is on. */
const unconfirmed = (): OrderPen => {
  const pen = unverified()
  pen.write('step.set_aside', { stepKey: 'vehicle.confirm.stud-torque', reason: wordsOf('why') }, bay)
  workUntil(pen, (key) => key === 'RR.studs.torque-half')
  return pen
}

const onTheirWay = (): OrderPen[] => [
  declined(),
  asked(),
  unconfirmed(),
  replanned([{ kind: 'rotate', pattern: 'rearward-cross' }]),
  replanned([
    { kind: 'find-leak', wheel: 'LF' },
    { kind: 'fit-tire', wheel: 'RR' },
  ]),
]

describe('why a step may not be closed', () => {
  it('is what the server refuses a well-formed entry for, at every stage of a job and beside its way', () => {
    const pens = [...stages.map((stage) => oneSensorJob(stage)), ...onTheirWay()]
    const seen = new Set(pens.flatMap(compared))
    expect([...seen].toSorted()).toEqual(
      expect.arrayContaining([
        'FIGURE_UNVERIFIED',
        'ORDER_ENDED',
        'ORDER_SEALED',
        'STEP_ALREADY_CLOSED',
        'STEP_NOT_AUTHORIZED',
        'STEP_OUT_OF_ORDER',
        'WHEEL_HELD_BY_FINDING',
        'open',
      ]),
    )
  })

  it('is the same whatever people try', () => {
    const job = oneSensorJob('handed-back', 'why-not').entries()
    const begun = fc.oneof(
      { weight: 3, arbitrary: fc.integer({ min: 1, max: job.length }).map((end) => job.slice(0, end)) },
      { weight: 1, arbitrary: fc.constantFrom(...onTheirWay().map((pen) => [...pen.entries()])) },
    )
    fc.assert(
      fc.property(begun, commands, (entries, tries) => {
        const pen = orderPen('why-not', entries)
        for (const command of tries) {
          const count = pen.entries().length
          tryCommand(pen, command)
          if (pen.entries().length > count) compared(pen)
        }
      }),
      { seed: 20_260_112, numRuns: 120 },
    )
  }, 120_000)
})
