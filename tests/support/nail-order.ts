import { arrivalCheck, midMorning } from '../../prisma/seeds/demo/arrival-check.ts'
import { confirmFindings } from '../../prisma/seeds/demo/confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../../prisma/seeds/demo/issue-estimate.ts'
import type { OrderPen } from '../../prisma/seeds/demo/order-pen.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { tabletId } from '../../prisma/seeds/demo/places.ts'
import { askedAbout, writeUp } from '../../prisma/seeds/demo/write-up.ts'
import { freeLinnet } from './free-vehicles.ts'

export const nailCustomer = freeLinnet.customer

/** The IDs of its sensors, hexadecimal. */
const ids = { LF: '4B20D2A1', RF: '4B20D316', RR: '4B20CF58', LR: '4B20D1EC' }

/** A nail in the right rear tire, seen on arrival: the search for the leak is agreed on, and the job is planned. */
export const writeNailOrder = (pen: OrderPen): void => {
  const [by, technician, deviceId] = [people.devin, people.ines, tabletId(5)]
  writeUp(pen, {
    vehicle: freeLinnet.visitor,
    at: ['07:30', '07:32', '07:33', '07:34'],
    by,
    waitsHere: true,
    promisedAt: '14:30',
    odometerMiles: 50_000,
    words: 'The light is on, and something ticks at the back.',
    reportedLight: 'solid',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: technician,
    deviceId,
    from: '08:20',
    minutesDriven: null,
    lastSet: null,
    light: 'solid',
    wheels: [
      { wheel: 'LF', gauge: 32.3, id: ids.LF },
      { wheel: 'RF', gauge: 32.1, id: ids.RF },
      { wheel: 'RR', gauge: 23.2, id: ids.RR, tireDamage: ['puncture'] },
      { wheel: 'LR', gauge: 32.4, id: ids.LR },
    ],
    spare: 58.7,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 30 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: technician, deviceId, issuedAt: '08:36', confirmedAt: '08:41' })
  issueEstimate(pen, { at: '08:55', by, readyAt: '14:30', look: 'charged' })
  authorizeAll(pen, {
    ...{ by, shownAt: '09:00', decidedAt: '09:05', channel: 'in-person' },
    customer: freeLinnet.owner,
  })
  pen.write('order.assigned', { staffId: technician.id, bay: 3 }, { at: '09:10', by })
}
