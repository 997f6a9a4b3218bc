import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import { sensorOf } from '@bayledger/reckoning/sheet'
import type { RoadPosition } from '@bayledger/reckoning/wheels'
import { paceFrom } from './arrival-check.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'
import { takePhoto } from './photos.ts'

type Begun = {
  readonly wheel: RoadPosition
  readonly by: DemoPerson
  readonly deviceId: string
  readonly from: string
  readonly sensorId: string
  readonly partNumber: string
  readonly lot: string
  readonly madeMonth: string
  readonly kitPart: string
  readonly kitLot: string
}

/** A new sensor on its way into a wheel, up to its seat: matched, programmed, vehicle lifted, wheel off, tire open and seen, fitted. */
export const beginSensor = (pen: OrderPen, begun: Begun): void => {
  const { wheel, sensorId } = begun
  const sensor = sensorOf(pen.state().sheet?.sheet)
  const torque = sensor?.stemNutTorque ?? sensor?.stemScrewTorque
  if (!sensor || !torque) throw new RangeError(`${pen.number}: the sheet has no sensor to fit`)
  const pace = paceFrom(begun.from, 220)
  const now = () => ({ at: pace(), by: begun.by, deviceId: begun.deviceId })
  const write = <K extends Kind>(kind: K, payload: PayloadOf<K>) => pen.write(kind, payload, now())

  write('part.drawn', {
    stepKey: `${wheel}.sensor.match`,
    wheel,
    partNumber: begun.partNumber,
    lot: begun.lot,
    madeMonth: begun.madeMonth,
    quantity: 1,
    matches: { frequencyMHz: sensor.frequencyMHz, stem: sensor.stem },
  })
  write('sensor.programmed', {
    stepKey: `${wheel}.sensor.program`,
    wheel,
    sensorId,
    identity: 'new',
    frequencyMHz: sensor.frequencyMHz,
    readBack: true,
  })
  write('step.closed', { stepKey: 'vehicle.lift.up', value: null })
  write('wheel.removed', { stepKey: `${wheel}.wheel.off`, wheel, remark: null })
  write('step.closed', { stepKey: `${wheel}.tire.open`, value: null })
  write('tire.inspected', {
    when: 'inside',
    stepKey: `${wheel}.tire.inside`,
    wheel,
    valve: null,
    stem: null,
    treadDepth32nds: null,
    tireAgeYears: null,
    sensorAgeMonths: null,
    sealantSeen: false,
    tireDamage: null,
    fastenerDamage: null,
    inside: 'sound',
  })
  takePhoto(pen, { photo: 'tire-inside', subject: 'inside', wheel, stepKey: `${wheel}.tire.inside` }, now())
  takePhoto(pen, { photo: 'sensor-number', subject: 'sensor', wheel, stepKey: `${wheel}.sensor.fit` }, now())
  write('sensor.fitted', {
    stepKey: `${wheel}.sensor.fit`,
    wheel,
    sensorId,
    valve: sensor.stem,
    kitPart: begun.kitPart,
    kitLot: begun.kitLot,
    torque,
  })
}
