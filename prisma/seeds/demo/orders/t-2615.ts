import { askedBundle } from '@bayledger/reckoning/money/asked-bundles'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { arrivalCheck, midMorning } from '../arrival-check.ts'
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

/** Linnet D: 62 miles after its new tires. One nut of the right front moved; the wheel was gone round again, and all five held. */
export const writeT2615 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.linnetD
  const [by, deviceId] = [people.bo, tabletId(2)]
  writeUp(pen, {
    vehicle: 'linnet-d',
    at: ['07:20', '07:21', '07:22', '07:23'],
    by: people.devin,
    waitsHere: true,
    promisedAt: '08:15',
    odometerMiles: 61_464,
    words: 'You said to come back after fifty to a hundred miles to have the nuts checked.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by,
    deviceId,
    from: '07:27',
    minutesDriven: null,
    lastSet: { temperature: 38 },
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 31.9, id: ids.LF },
      { wheel: 'RF', gauge: 31.9, id: ids.RF },
      { wheel: 'RR', gauge: 31.8, id: ids.RR },
      { wheel: 'LR', gauge: 31.9, id: ids.LR },
    ],
    spare: 58.5,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 0, treadDepth32nds: 10, sensorAgeMonths: 78 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by, deviceId, issuedAt: '07:38', confirmedAt: '07:39' })
  issueEstimate(pen, {
    at: '07:41',
    by: people.devin,
    readyAt: '08:15',
    look: 'waived',
    added: [askedBundle({ kind: 'torque-again', wheels: roadPositions }, firstPrices, sheets.linnet)],
  })
  authorizeAll(pen, { by: people.devin, shownAt: '07:42', decidedAt: '07:43', channel: 'in-person' })
  const clock = visitClock((7 * 60 + 45) * 60)
  doSteps(pen, {
    by,
    deviceId,
    second: people.greta,
    surroundings: { outdoor: midMorning.outdoor, overnightLow: midMorning.overnightLow, tire: 27 },
    sensors: { ids, frequencyMHz: 433.92 },
    parts: {},
    wrench: wrenchInUse(pen.calendar, { cyclesBefore: 1_320, clicksARound: 5 }),
    odometerMiles: 61_464,
    secondsOf: usualSeconds,
    pass: clock.pass,
    moves: (wheel, round) => (wheel === 'RF' && round === 0 ? [3] : []),
  })
  return endOf(pen, {
    by: people.devin,
    sealedAt: '08:04',
    at: '08:07',
    odometerMiles: 61_464,
    signedBy: 'A. Pryce-Holm',
    releaseAgreedBy: null,
  })
}
