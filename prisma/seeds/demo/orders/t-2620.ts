import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet F: its owner saw a flash, and there is nothing to find today. The inspection is given away; what to watch for is on paper. */
export const writeT2620 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.linnetF
  writeUp(pen, {
    vehicle: 'linnet-f',
    at: ['09:48', '09:50', '09:51', '09:52'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '11:00',
    odometerMiles: 66_230,
    words: 'It flashed once last week, I am sure of it. Today it is off.',
    reportedLight: 'intermittent-other',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.bo,
    deviceId: tabletId(2),
    from: '10:12',
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 32.3, id: ids.LF },
      { wheel: 'RF', gauge: 32.1, id: ids.RF },
      { wheel: 'RR', gauge: 32.4, id: ids.RR },
      { wheel: 'LR', gauge: 32.2, id: ids.LR },
    ],
    spare: { gauge: 58.9, id: null },
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 6, treadDepth32nds: 6, sensorAgeMonths: 78 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.bo, deviceId: tabletId(2), issuedAt: '10:22', confirmedAt: '10:24' })
  return endOf(pen, {
    by: people.ottoline,
    sealedAt: '10:34',
    at: '10:38',
    odometerMiles: 66_230,
    signedBy: 'G. Silverthorn',
    releaseAgreedBy: null,
  })
}
