import { type ArrivalWheel, arrivalCheck, midMorning } from '../../../prisma/seeds/demo/arrival-check.ts'
import type { OrderPen } from '../../../prisma/seeds/demo/order-pen.ts'
import { people } from '../../../prisma/seeds/demo/people.ts'
import { tabletId } from '../../../prisma/seeds/demo/places.ts'
import { askedAbout, writeUp } from '../../../prisma/seeds/demo/write-up.ts'
import { freeMoor } from '../../support/free-vehicles.ts'
import type { Wheels } from './bay.ts'

/** A customer and vehicle that come with a sensor that no longer answers. */
export const { customer, plate } = freeMoor

/**
 * The right rear sensor is silent; all tires hold what cold leaves of the label's figure. Read at 27 °F outdoors, 820 ft
 * up: a sensor that refers to the sea reads 0.4 psi under the gauge.
 */
export const wheels: Wheels = {
  LF: { gauge: '31.6', sensor: '31.2', id: '1A2B3C10' },
  RF: { gauge: '31.4', sensor: '31.0', id: '1A2B3C11' },
  RR: { gauge: '31.5', sensor: null, id: '1A2B3C12' },
  LR: { gauge: '31.7', sensor: '31.3', id: '1A2B3C13' },
  SP: { gauge: '58.5' },
}

/** The same vehicle, written up and checked by Ines with these figures. */
export const writeSilentOrder = (pen: OrderPen): void => {
  writeUp(pen, {
    vehicle: freeMoor.visitor,
    at: ['07:40', '07:42', '07:43', '07:44'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '14:30',
    odometerMiles: 133_702,
    words: 'The light flashes for about a minute, then it stays on.',
    reportedLight: 'flash-then-solid',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.ines.id, bay: 6 }, { at: '08:44', by: people.ottoline })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.ines,
    deviceId: tabletId(4),
    from: '08:48',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: (['LF', 'RF', 'RR', 'LR'] as const).map(asChecked),
    spare: Number(wheels.SP.gauge),
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 4, treadDepth32nds: 7, sensorAgeMonths: 126 },
    stored: { LF: wheels.LF.id, RF: wheels.RF.id, RR: wheels.RR.id, LR: wheels.LR.id },
    codes: [],
  })
}

const asChecked = (wheel: 'LF' | 'RF' | 'RR' | 'LR'): ArrivalWheel => {
  const { gauge, sensor, id } = wheels[wheel]
  return { wheel, gauge: Number(gauge), id: sensor === null ? null : id }
}
