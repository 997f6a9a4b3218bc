import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Tarn D: a used wheel at the left front, from a car that was here in 2024. Its bore, offset and seat come before any price. */
export const writeT2618 = (pen: OrderPen): void => {
  const ids = sensorSets.tarnD
  const [by, deviceId] = [people.greta, tabletId(2)]
  writeUp(pen, {
    vehicle: 'tarn-d',
    at: ['10:50', '10:52', '10:53', '10:54'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '15:30',
    odometerMiles: 102_377,
    words:
      'I bent the left front wheel and bought a used one. Since it is on, the light flashes at every start.',
    reportedLight: 'flash-then-solid',
    events: askedAbout({ kind: 'used-wheel', happened: true, wheel: 'LF', daysAgo: 5 }),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by,
    deviceId,
    from: '11:17',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 34.2, id: sensorSets.linnetG.RF, frequencyMHz: 433.92, sensorAgeMonths: 78 },
      { wheel: 'RF', gauge: 34, id: ids.RF },
      { wheel: 'RR', gauge: 34.3, id: ids.RR },
      { wheel: 'LR', gauge: 34.1, id: ids.LR },
    ],
    spare: 58.3,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 70 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by, deviceId, issuedAt: '11:31', confirmedAt: '11:34' })
}
