import type { StaffMember } from '@bayledger/contract/identity'
import type { Instrument } from '@bayledger/contract/settings'
import type { Draft } from '@bayledger/ledger/entry'
import { readySteps } from '@bayledger/ledger/questions/gates'
import type { Step } from '@bayledger/reckoning/step'
import { describe, expect, it } from 'vitest'
import {
  arrivalOf,
  oneSensorJob,
  workUntil,
} from '../../../../packages/ledger/test-support/one-sensor-job.ts'
import type { OrderPen } from '../../../../packages/ledger/test-support/order-pen.ts'
import {
  advisor,
  colleague,
  gauge,
  lead,
  locationId,
  otherTablet,
  type Person,
  tablet,
  technician,
  wrench,
} from '../../../../packages/ledger/test-support/shop.ts'
import { closingOf } from '../../../../packages/ledger/test-support/step-payload.ts'
import { type KnownHere, refusedHere } from './admit-here.ts'
import type { OrderReply } from './order.ts'
import type { Parcel } from './parcel.ts'

const replyOf = (pen: OrderPen): OrderReply =>
  ({
    orderId: pen.orderId,
    head: { seq: pen.state().seq, hash: pen.state().headHash },
    entries: pen.entries(),
    sides: [],
    withheld: [],
    history: null,
    earlierOdometer: null,
    readOnly: null,
  }) as unknown as OrderReply

const member = ({ id, roles }: Person): StaffMember => ({ staffId: id, name: id, roles: [...roles] })

const instruments: Instrument[] = [
  {
    kind: 'gauge',
    instrumentId: gauge.instrumentId,
    locationId,
    code: gauge.code,
    dueOn: null,
    quarantined: false,
    correctionPsi: 0,
  },
  {
    kind: 'wrench',
    instrumentId: wrench.instrumentId,
    locationId,
    code: wrench.code,
    dueOn: wrench.dueOn,
    quarantined: false,
    cycles: wrench.cyclesBefore,
    rangeLow: wrench.rangeLow,
    rangeHigh: wrench.rangeHigh,
    rangeUnit: wrench.rangeUnit,
  },
]

const knownAt = (now: string): KnownHere => ({
  now,
  staff: [advisor, technician, colleague, lead].map(member),
  instruments,
  stock: [],
  locations: [],
})

const parcelOf = (drafts: readonly Draft[], by: Person, deviceId: string, heardSeq: number): Parcel => ({
  orderId: drafts[0]?.orderId ?? '',
  entries: drafts.map(({ id, orderId, kind, version, payload, writtenAt, restsOn }) => ({
    id,
    orderId,
    kind,
    version,
    payload,
    writtenAt,
    restsOn: [...restsOn],
  })),
  sides: [],
  says: 'a step',
  staffId: by.id,
  deviceId,
  heardSeq,
  form: null,
})

/** The careful technician's entry for a step of this order, by whoever may write it. */
const nextOf = (pen: OrderPen, step: Step, deviceId = tablet): Parcel => {
  const by = step.closedBy === 'torque.checked' ? lead : technician
  const { kind, payload } = closingOf(pen.state(), step)
  return parcelOf([pen.draft(kind, payload, { by, deviceId })], by, deviceId, pen.state().seq)
}

describe('the ledger’s rules on a tablet', () => {
  it('let every step of a whole job pass, one on top of the other, as the server does', () => {
    const pen = oneSensorJob('decided')
    const held = replyOf(pen)
    const onTop: Parcel[] = []
    let steps = 0
    for (let step = readySteps(pen.state())[0]; step; step = readySteps(pen.state())[0]) {
      const parcel = nextOf(pen, step)
      expect([step.stepKey, refusedHere(held, onTop, parcel, knownAt(pen.now()))]).toEqual([
        step.stepKey,
        null,
      ])
      onTop.push(parcel)
      workUntil(pen, (key) => key !== step.stepKey)
      steps += 1
    }
    expect(steps).toBeGreaterThan(15)
  })

  it('refuse a step that the tablet itself has closed and not sent yet', () => {
    const pen = oneSensorJob('decided')
    const [step] = readySteps(pen.state())
    if (!step) throw new RangeError('nothing is ready')
    const first = nextOf(pen, step)
    const second = nextOf(pen, step)
    expect(refusedHere(replyOf(pen), [first], second, knownAt(pen.now()))).toMatchObject({
      code: 'STEP_ALREADY_CLOSED',
    })
  })

  it('judge each entry of a parcel after those before it', () => {
    const pen = oneSensorJob('decided')
    const [step] = readySteps(pen.state())
    if (!step) throw new RangeError('nothing is ready')
    const { kind, payload } = closingOf(pen.state(), step)
    const twice = [1, 2].map(() => pen.draft(kind, payload, { by: technician }))
    const parcel = parcelOf(twice, technician, tablet, pen.state().seq)
    expect(refusedHere(replyOf(pen), [], parcel, knownAt(pen.now()))).toMatchObject({
      code: 'STEP_ALREADY_CLOSED',
    })
  })

  it.each<[string, string, Partial<KnownHere>]>([
    ['a gauge that is not registered here', 'GAUGE_UNKNOWN', { instruments: [] }],
    [
      'a gauge in quarantine',
      'GAUGE_UNKNOWN',
      { instruments: instruments.map((one) => ({ ...one, quarantined: true })) },
    ],
    ['somebody who does not work here', 'ROLE_NOT_ALLOWED', { staff: [] }],
  ])('refuse %s', (_what, code, change) => {
    const pen = oneSensorJob('written-up')
    const draft = pen.draft('wheel.checked', arrivalOf('LF'), { by: technician, deviceId: otherTablet })
    const parcel = parcelOf([draft], technician, otherTablet, pen.state().seq)
    expect(refusedHere(replyOf(pen), [], parcel, { ...knownAt(pen.now()), ...change })).toMatchObject({
      code,
    })
  })

  it('leave to the server what only the server knows', () => {
    const pen = oneSensorJob('decided')
    workUntil(pen, (key) => stepOf(pen, key).closedBy === 'sensor.programmed')
    const step = readySteps(pen.state()).find(({ closedBy }) => closedBy === 'sensor.programmed')
    if (!step) throw new RangeError('nothing is to be programmed')
    expect(refusedHere(replyOf(pen), [], nextOf(pen, step), knownAt(pen.now()))).toBeNull()
  })
})

const stepOf = (pen: OrderPen, key: string): Step => {
  const step = pen.state().plan?.plan.steps.find(({ stepKey }) => stepKey === key)
  if (!step) throw new RangeError(`no step ${key}`)
  return step
}
