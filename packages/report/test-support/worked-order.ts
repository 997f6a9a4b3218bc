import { readySteps } from '@bayledger/ledger/questions/gates'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { seal } from '../../ledger/test-support/money.ts'
import {
  answersOf,
  arrivalOf,
  decisionOf,
  issuePlan,
  opening,
  owner,
  stageWriters,
  storedAsReceived,
  surroundings,
  tireOf,
} from '../../ledger/test-support/one-sensor-job.ts'
import { type OrderPen, orderPen } from '../../ledger/test-support/order-pen.ts'
import { photo } from '../../ledger/test-support/photo.ts'
import { wordsOf } from '../../ledger/test-support/seeded-ids.ts'
import { advisor, lead, technician } from '../../ledger/test-support/shop.ts'
import { closingOf } from '../../ledger/test-support/step-payload.ts'
import { workedSheet } from './worked-sheet.ts'

const desk = { by: advisor, deviceId: null }
const bay = { by: technician }

/** An order that is written up for this sheet and consented to. */
const writeUp = (pen: OrderPen, sheet: SpecificationSheet): void => {
  pen.write('order.opened', opening, { ...desk, given: { orderNumber: 'T-2602' } })
  const events = [
    { kind: 'sealant', happened: false },
    { kind: 'rotation', happened: true, daysAgo: 7 },
  ] as const
  pen.write(
    'complaint.recorded',
    { words: wordsOf('complaint'), reportedLight: 'flash-then-solid', events: [...events] },
    desk,
  )
  pen.write('sheet.chosen', { sheet }, desk)
  const money = seal({ lookFeeCents: 5_200 })
  pen.write(
    'authority.given',
    { to: ['look', 'drive'], by: owner, channel: 'in-person', money, lookFee: 'charged' },
    desk,
  )
}

/** The sensor refers to the sea, and so reads 0.4 psi under the gauge. */
const gauged = (wheel: WheelPosition, psi: number): PayloadOf<'wheel.checked'> => {
  const { gauge, sensor } = arrivalOf(wheel)
  return arrivalOf(wheel, {
    gauge: gauge && { ...gauge, pressure: { value: psi, unit: 'psi' } },
    sensor:
      sensor?.answer === 'answered' ? { ...sensor, pressure: { value: psi - 0.4, unit: 'psi' } } : sensor,
  })
}

/** The spare lay under cargo. One reading was entered at the wrong wheel and withdrawn. */
const checkArrival = (pen: OrderPen, { psi = {}, nail }: Change): void => {
  pen.write('surroundings.recorded', { ...surroundings, minutesDriven: 5, lastSet: null }, bay)
  pen.write(
    'telltale.observed',
    { phase: 'arrival', stepKey: null, lampCheck: 'lights', behavior: 'flash-then-solid', timed: null },
    bay,
  )
  const wrong = pen.write('wheel.checked', gauged('LF', 31), bay)
  pen.write(
    'entry.struck',
    { entryId: wrong.id, reason: 'wrong-wheel', words: null, secondPerson: null },
    bay,
  )
  for (const wheel of roadPositions) {
    const figure = psi[wheel]
    pen.write('wheel.checked', figure === undefined ? arrivalOf(wheel) : gauged(wheel, figure), bay)
  }
  const notPossible = [{ field: 'gauge', why: 'cargo in the way' }]
  pen.write('wheel.checked', arrivalOf('SP', { gauge: null, notPossible }), bay)
  for (const wheel of [...roadPositions, 'SP'] as const)
    pen.write(
      'tire.inspected',
      tireOf(wheel, {
        ...(wheel === 'SP' ? {} : { sensorAgeMonths: 110 }),
        ...(wheel === nail ? { tireDamage: ['puncture'] } : {}),
      }),
      bay,
    )
  pen.write('module.read', storedAsReceived, bay)
  pen.write('photo.attached', photo(), bay)
}

type Change = {
  readonly sheet?: SpecificationSheet
  /** What the gauge reads on arrival, where it differs. */
  readonly psi?: Partial<Record<WheelPosition, number>>
  /** The tire in which a nail is seen on arrival. */
  readonly nail?: WheelPosition
  /** Bundles that the customer says No to. */
  readonly declined?: readonly string[]
  /** Steps that are not done. */
  readonly setAside?: readonly string[]
  /** Writes something else than what closes the step that is next, and says whether it did. */
  readonly instead?: (pen: OrderPen, step: Step) => boolean
}

/**
 * The ledger of an order up to its seal, as the shop would write it: a right rear sensor found silent, replaced, torqued,
 * checked by a second person, learned and driven 23 minutes. Four new sensors were offered and put off.
 */
export const workedOrder = (name: string, change: Change = {}): OrderPen => {
  const pen = orderPen(name)
  writeUp(pen, change.sheet ?? workedSheet)
  checkArrival(pen, change)
  stageWriters.confirmed(pen)
  stageWriters.estimated(pen)
  const decided = pen.write('estimate.decided', decisionOf(pen, answers(pen, change.declined ?? [])), desk)
  issuePlan(pen, decided.id)
  for (let step = readySteps(pen.state())[0]; step; step = readySteps(pen.state())[0]) {
    if (change.setAside?.includes(step.stepKey)) setAside(pen, step)
    else if (!change.instead?.(pen, step)) close(pen, step)
  }
  return pen
}

const setAside = (pen: OrderPen, { stepKey }: Step): void => {
  pen.write('step.set_aside', { stepKey, reason: wordsOf('why') }, bay)
}

const putOff = 'sensor.set-of-four'

const answers = (pen: OrderPen, declined: readonly string[]): ReturnType<typeof answersOf> => {
  const later = answersOf(pen, 'deferred')
  const no = answersOf(pen, 'declined')
  return answersOf(pen, 'authorized').map((yes, index) => {
    if (declined.includes(yes.bundleKey)) return no[index] ?? yes
    return yes.bundleKey === putOff ? (later[index] ?? yes) : yes
  })
}

const asLeft: Partial<Record<WheelPosition, number>> = { LF: 37.6, RR: 37.7 }

/** Closes a step as a careful technician does. Two tires end a little over the target; the second person comes over first. */
const close = (pen: OrderPen, step: Step): void => {
  const { kind, payload } = closingOf(pen.state(), step)
  const by = step.closedBy === 'torque.checked' ? lead : technician
  if (kind === 'pressure.set') {
    const left = asLeft[payload.wheel]
    pen.write(kind, left === undefined ? payload : { ...payload, asLeft: { value: left, unit: 'psi' } }, {
      by,
    })
  } else if (kind === 'torque.checked') {
    pen.write(kind, { ...payload, timed: payload.timed && { ...payload.timed, seconds: 75 } }, { by })
  } else if (kind === 'module.read') {
    // This vehicle's module leaves out a leading zero.
    const ids = Object.fromEntries(Object.entries(payload.ids).map(([at, id]) => [at, id.replace(/^0/, '')]))
    pen.write(kind, { ...payload, ids }, { by })
  } else pen.write(kind, payload, { by })
}
