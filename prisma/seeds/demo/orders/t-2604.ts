import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Haywain A: the light is for the spare, which has a sensor of its own. Anybody may set it. */
export const writeT2604 = (pen: OrderPen): void => {
  const { SP, ...ids } = sensorSets.haywainA
  writeUp(pen, {
    vehicle: 'haywain-a',
    at: ['08:14', '08:16', '08:17', '08:18'],
    by: people.devin,
    waitsHere: false,
    promisedAt: '13:00',
    odometerMiles: 61_287,
    words: 'Light is on steady. I checked all four and they are fine. It stood in your lot since last night.',
    reportedLight: 'solid',
    events: askedAbout(),
    consentBy: 'telephone',
    lookFee: 'waived-with-work',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.bo,
    deviceId: tabletId(3),
    from: '09:02',
    minutesDriven: null,
    lastSet: null,
    light: 'solid',
    wheels: [
      { wheel: 'LF', gauge: 54.2, id: ids.LF },
      { wheel: 'RF', gauge: 54, id: ids.RF },
      { wheel: 'RR', gauge: 64.1, id: ids.RR },
      { wheel: 'LR', gauge: 63.9, id: ids.LR },
    ],
    spare: { gauge: 38, id: SP },
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 4, treadDepth32nds: 8, sensorAgeMonths: 56 },
    stored: { ...ids, SP },
    codes: [],
  })
  confirmFindings(pen, { by: people.bo, deviceId: tabletId(3), issuedAt: '09:16', confirmedAt: '09:18' })
  issueEstimate(pen, { at: '09:41', by: people.devin, readyAt: '13:00', look: 'waived-with-work' })
  authorizeAll(pen, { by: people.devin, shownAt: '10:20', decidedAt: '10:22', channel: 'telephone' })
}
