import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { workThrough } from '../work-through.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Dunnock: wheels moved front to rear elsewhere, pressures and memory left as they were. Set and sent; read-back due. */
export const writeT2616 = (pen: OrderPen): void => {
  const ids = sensorSets.dunnock
  writeUp(pen, {
    vehicle: 'dunnock',
    at: ['09:05', '09:07', '09:08', '09:09'],
    by: people.devin,
    waitsHere: true,
    promisedAt: '12:00',
    odometerMiles: 40_118,
    words:
      'The display names the wrong corner when I let air out of one. They rotated my tires elsewhere. I live next door.',
    reportedLight: 'off',
    events: askedAbout({ kind: 'rotation', happened: true, daysAgo: 12 }),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.bo.id, bay: 3 }, { at: '09:24', by: people.devin })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.bo,
    deviceId: tabletId(3),
    from: '09:27',
    minutesDriven: 2,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 41.6, id: ids.LF },
      { wheel: 'RF', gauge: 41.4, id: ids.RF },
      { wheel: 'RR', gauge: 35.8, id: ids.RR },
      { wheel: 'LR', gauge: 35.9, id: ids.LR },
    ],
    spare: 58.8,
    frequencyMHz: 433.92,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 52 },
    stored: { LF: ids.LR, RF: ids.RR, RR: ids.RF, LR: ids.LF },
    codes: [],
  })
  confirmFindings(pen, { by: people.bo, deviceId: tabletId(3), issuedAt: '09:43', confirmedAt: '09:46' })
  issueEstimate(pen, { at: '10:01', by: people.devin, readyAt: '12:00', look: 'charged' })
  authorizeAll(pen, { by: people.devin, shownAt: '10:14', decidedAt: '10:16', channel: 'in-person' })
  workThrough(pen, {
    by: people.bo,
    deviceId: tabletId(3),
    surroundings: { outdoor: 27, overnightLow: 11, tire: 58 },
    sensors: { ids: ids, frequencyMHz: 433.92 },
    pressuresAt: '11:05',
    relearnedAt: '11:32',
    closing: null,
  })
}
