import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Wren: the left front wheel sends on a frequency that the car does not listen to. The right part comes on Wednesday. */
export const writeT2607 = (pen: OrderPen): void => {
  const ids = sensorSets.wren
  writeUp(pen, {
    vehicle: 'wren',
    at: ['08:03', '08:05', '08:06', '08:07'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '12:30',
    odometerMiles: 19_872,
    words:
      'Somebody put a new sensor in the left front before Christmas. Since then it flashes at every start.',
    reportedLight: 'flash-then-solid',
    events: askedAbout({ kind: 'sensor-replaced-elsewhere', happened: true, wheel: 'LF', daysAgo: 24 }),
    consentBy: 'telephone',
    lookFee: 'charged',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.rufus,
    deviceId: tabletId(1),
    from: '08:58',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 41.2, id: '77D1A90E', frequencyMHz: 433.92, sensorAgeMonths: 3 },
      { wheel: 'RF', gauge: 41, id: ids.RF },
      { wheel: 'RR', gauge: 41.1, id: ids.RR },
      { wheel: 'LR', gauge: 41.3, id: ids.LR },
    ],
    spare: null,
    frequencyMHz: 2_400,
    valve: 'clamp-in',
    tires: { ageYears: 2, treadDepth32nds: 6, sensorAgeMonths: 30 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.rufus, deviceId: tabletId(1), issuedAt: '09:12', confirmedAt: '09:15' })
  issueEstimate(pen, { at: '09:28', by: people.ottoline, readyAt: '16:30', look: 'charged' })
  authorizeAll(pen, { by: people.ottoline, shownAt: '09:44', decidedAt: '09:46', channel: 'telephone' })
  pen.write(
    'part.promised',
    { partCode: 'TS-2400-C', promisedAt: pen.calendar.atOn('2026-01-14', '10:00') },
    { at: '10:11', by: people.ottoline },
  )
}
