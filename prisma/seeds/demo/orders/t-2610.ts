import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { workThrough } from '../work-through.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Tarn B: on its winter wheels, which it has never been introduced to. Relearned; 13 of 20 minutes driven. */
export const writeT2610 = (pen: OrderPen): void => {
  const heard = sensorSets.tarnBWinter
  writeUp(pen, {
    vehicle: 'tarn-b',
    at: ['08:55', '08:57', '08:58', '08:59'],
    by: people.devin,
    waitsHere: true,
    promisedAt: '12:15',
    odometerMiles: 71_940,
    words:
      'I put my winter wheels on last weekend. Ever since, the light flashes and then stays on. I live next door.',
    reportedLight: 'flash-then-solid',
    events: askedAbout({ kind: 'seasonal-wheels', happened: true, daysAgo: 2 }),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.ines.id, bay: 5 }, { at: '09:10', by: people.devin })
  arrivalCheck(pen, {
    by: people.ines,
    deviceId: tabletId(5),
    from: '09:21',
    outdoor: 27,
    overnightLow: 11,
    minutesDriven: 2,
    lastSet: { temperature: 27 },
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 34.6, id: heard.LF },
      { wheel: 'RF', gauge: 34.5, id: heard.RF },
      { wheel: 'RR', gauge: 34.7, id: heard.RR },
      { wheel: 'LR', gauge: 34.4, id: heard.LR },
    ],
    spare: 58.6,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 2, treadDepth32nds: 9, sensorAgeMonths: 27 },
    stored: sensorSets.tarnBSummer,
    codes: [],
  })
  confirmFindings(pen, { by: people.ines, deviceId: tabletId(5), issuedAt: '09:38', confirmedAt: '09:40' })
  issueEstimate(pen, { at: '09:52', by: people.devin, readyAt: '12:15', look: 'charged' })
  authorizeAll(pen, {
    by: people.devin,
    shownAt: '10:03',
    decidedAt: '10:06',
    channel: 'in-person',
  })
  workThrough(pen, {
    by: people.ines,
    deviceId: tabletId(5),
    pressuresAt: '10:12',
    relearnedAt: '10:58',
    surroundings: { outdoor: 27, overnightLow: 11, tire: 52 },
    sensors: { ids: heard, frequencyMHz: 315 },
    closing: { at: '11:02', drive: { minutes: 13, at: '11:40', odometerOut: 71_940, odometerIn: 71_947 } },
  })
}
