import { arrivalCheck, midMorning } from '../../prisma/seeds/demo/arrival-check.ts'
import { confirmFindings } from '../../prisma/seeds/demo/confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../../prisma/seeds/demo/issue-estimate.ts'
import type { OrderPen } from '../../prisma/seeds/demo/order-pen.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { tabletId } from '../../prisma/seeds/demo/places.ts'
import { sheets } from '../../prisma/seeds/demo/sheets.ts'
import { askedAbout, writeUp } from '../../prisma/seeds/demo/write-up.ts'
import { freeLinnet, freeMoor } from './free-vehicles.ts'

const [by, technician, deviceId] = [people.devin, people.ines, tabletId(5)]

/** The left rear tire is low: the search for the leak is agreed on and planned, and its metal stem will turn out to be seized. */
export const writeLowTire = (pen: OrderPen): void => {
  const ids = { LF: '1F04D2A1', RF: '1F04D316', RR: '1F04CF58', LR: '1F04D1EC' }
  writeUp(pen, {
    vehicle: freeMoor.visitor,
    at: ['07:30', '07:32', '07:33', '07:34'],
    by,
    waitsHere: true,
    promisedAt: '14:30',
    odometerMiles: 50_000,
    words: 'The light is on. I fill one tire every week.',
    reportedLight: 'solid',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived-with-work',
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
      { wheel: 'RR', gauge: 32.2, id: ids.RR },
      { wheel: 'LR', gauge: 23.4, id: ids.LR },
    ],
    spare: 58.7,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 60 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: technician, deviceId, issuedAt: '08:36', confirmedAt: '08:41' })
  issueEstimate(pen, { at: '08:55', by, readyAt: '14:30', look: 'waived-with-work' })
  authorizeAll(pen, {
    ...{ by, shownAt: '09:00', decidedAt: '09:05', channel: 'in-person' },
    customer: freeMoor.owner,
  })
  pen.write('order.assigned', { staffId: technician.id, bay: 3 }, { at: '09:10', by })
}

/** Its sheet says that it has no sensors, and all four answer; its owner wants plain stems. */
export const writeWantsPlainStems = (pen: OrderPen): void => {
  const ids = { LF: '4B04D2A1', RF: '4B04D316', RR: '4B04CF58', LR: '4B04D1EC' }
  writeUp(pen, {
    vehicle: { ...freeLinnet.visitor, sheet: sheets.finch },
    at: ['07:40', '07:42', '07:43', '07:44'],
    by,
    waitsHere: true,
    promisedAt: '13:00',
    odometerMiles: 41_200,
    words: 'No light. Put plain stems in all four and throw the sensors away.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: technician,
    deviceId,
    from: '08:45',
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 35.8, id: ids.LF },
      { wheel: 'RF', gauge: 35.9, id: ids.RF },
      { wheel: 'RR', gauge: 32.8, id: ids.RR },
      { wheel: 'LR', gauge: 32.7, id: ids.LR },
    ],
    spare: 58.7,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 60 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: technician, deviceId, issuedAt: '08:58', confirmedAt: '09:01' })
}
