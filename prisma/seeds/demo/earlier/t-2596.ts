import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Pannier A, nine days before it comes with a nail: nothing was wrong, and its pressures are on record. */
export const writeT2596 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.pannierA
  writeUp(pen, {
    vehicle: 'pannier-a',
    at: ['08:20', '08:22', '08:23', '08:24'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '09:30',
    odometerMiles: 118_462,
    words: 'No light. Look over the van before the new year’s rounds.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    by: people.ines,
    deviceId: tabletId(4),
    from: '08:31',
    outdoor: 41,
    overnightLow: 33,
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 51.7, id: ids.LF },
      { wheel: 'RF', gauge: 51.6, id: ids.RF },
      { wheel: 'RR', gauge: 73.6, id: ids.RR },
      { wheel: 'LR', gauge: 72, id: ids.LR },
    ],
    spare: { gauge: 71.4, id: null },
    frequencyMHz: 433.92,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 8, sensorAgeMonths: 64 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.ines, deviceId: tabletId(4), issuedAt: '08:44', confirmedAt: '08:46' })
  return endOf(pen, {
    by: people.ottoline,
    sealedAt: '08:55',
    at: '08:58',
    odometerMiles: 118_462,
    signedBy: 'Cobble Lane Flowers',
    releaseAgreedBy: null,
  })
}
