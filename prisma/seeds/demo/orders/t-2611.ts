import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { t2594Sensor } from '../earlier/t-2594.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { demoId } from '../seeded.ts'
import { sensorSets } from '../sensor-sets.ts'
import { workThrough } from '../work-through.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Moor B: it comes back from our own work of the last day of December, which it never learned. Set; the relearn is under way. */
export const writeT2611 = (pen: OrderPen): void => {
  const ids = { ...sensorSets.moorB, LR: t2594Sensor }
  const [by, deviceId] = [people.bo, tabletId(3)]
  writeUp(pen, {
    vehicle: 'moor-b',
    at: ['07:44', '07:46', '07:47', '07:48'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '13:00',
    odometerMiles: 128_846,
    words: 'You put in a sensor twelve days ago, and it flashes again since the next morning.',
    reportedLight: 'flash-then-solid',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
    comebackOf: demoId('order/T-2594'),
  })
  arrivalCheck(pen, {
    ...midMorning,
    by,
    deviceId,
    from: '08:05',
    minutesDriven: null,
    lastSet: { temperature: 35 },
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 32.1, id: ids.LF },
      { wheel: 'RF', gauge: 32.3, id: ids.RF },
      { wheel: 'RR', gauge: 32, id: ids.RR },
      { wheel: 'LR', gauge: 32.2, id: ids.LR, sensorAgeMonths: 6 },
    ],
    spare: 58.2,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 6, sensorAgeMonths: 88 },
    stored: sensorSets.moorB,
    codes: [],
  })
  confirmFindings(pen, { by, deviceId, issuedAt: '08:16', confirmedAt: '08:18' })
  pen.write('comeback.judged', { cause: 'workmanship', words: null }, { at: '08:26', by: people.greta })
  issueEstimate(pen, { at: '08:34', by: people.ottoline, readyAt: '13:00', look: 'waived' })
  authorizeAll(pen, { by: people.ottoline, shownAt: '08:40', decidedAt: '08:41', channel: 'in-person' })
  pen.write('order.assigned', { staffId: by.id, bay: 2 }, { at: '10:56', by: people.ottoline })
  workThrough(pen, {
    by,
    deviceId,
    surroundings: { outdoor: midMorning.outdoor, overnightLow: midMorning.overnightLow, tire: 52 },
    sensors: { ids, frequencyMHz: 315 },
    pressuresAt: '10:57:30',
    closing: null,
  })
}
