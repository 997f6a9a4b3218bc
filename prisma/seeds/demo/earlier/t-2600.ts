import { askedBundle } from '@bayledger/reckoning/money/asked-bundles'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { doSteps } from '../do-steps.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import { wrenchInUse } from '../instruments.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { sheets } from '../sheets.ts'
import { usualSeconds } from '../step-seconds.ts'
import { visitClock } from '../visit-clock.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet D, on the Friday before: four new tires, its sensors kept. It comes back after 62 miles to have the torque checked. */
export const writeT2600 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.linnetD
  const [by, deviceId] = [people.rufus, tabletId(1)]
  writeUp(pen, {
    vehicle: 'linnet-d',
    at: ['10:02', '10:04', '10:05', '10:06'],
    by: people.devin,
    waitsHere: false,
    promisedAt: '14:30',
    odometerMiles: 61_388,
    words: 'Four new tires before the winter, please. The light is fine.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    by,
    deviceId,
    from: '10:20',
    outdoor: 38,
    overnightLow: 30,
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 32.4, id: ids.LF },
      { wheel: 'RF', gauge: 32.2, id: ids.RF },
      { wheel: 'RR', gauge: 32.5, id: ids.RR },
      { wheel: 'LR', gauge: 32.3, id: ids.LR },
    ],
    spare: 59,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 6, treadDepth32nds: 5, sensorAgeMonths: 78 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by, deviceId, issuedAt: '10:31', confirmedAt: '10:33' })
  issueEstimate(pen, {
    at: '10:41',
    by: people.devin,
    readyAt: '14:30',
    look: 'waived',
    added: [askedBundle({ kind: 'tires', wheels: roadPositions, tire: null }, firstPrices, sheets.linnet)],
  })
  authorizeAll(pen, { by: people.devin, shownAt: '10:44', decidedAt: '10:47', channel: 'in-person' })
  const clock = visitClock((10 * 60 + 52) * 60)
  doSteps(pen, {
    by,
    deviceId,
    second: people.greta,
    surroundings: { outdoor: 38, overnightLow: 30, tire: 56 },
    sensors: { ids, frequencyMHz: 433.92 },
    parts: {},
    wrench: wrenchInUse(pen.calendar, { cyclesBefore: 1_240, clicksARound: 5 }),
    odometerMiles: 61_388,
    secondsOf: usualSeconds,
    pass: clock.pass,
  })
  const at = clock.pass(300)
  pen.write(
    'payment.noted',
    { money: pen.money({ amountCents: 76_153 }), method: 'card', back: null },
    { at, by: people.devin },
  )
  return endOf(pen, {
    by: people.devin,
    sealedAt: clock.pass(120),
    at: clock.pass(240),
    odometerMiles: 61_402,
    signedBy: 'A. Pryce-Holm',
    releaseAgreedBy: null,
    retorqueAdvised: true,
  })
}
