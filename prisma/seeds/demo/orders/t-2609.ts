import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet B: the right front sensor is for another frequency. The estimate is ready and nobody has shown it yet. */
export const writeT2609 = (pen: OrderPen): void => {
  const ids = sensorSets.linnetB
  writeUp(pen, {
    vehicle: 'linnet-b',
    at: ['09:40', '09:42', '09:43', '09:44'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '15:00',
    odometerMiles: 66_041,
    words:
      'Another shop replaced a sensor and the light still flashes. I want the part back and a report for them.',
    reportedLight: 'flash-then-solid',
    events: askedAbout({ kind: 'sensor-replaced-elsewhere', happened: true, wheel: 'RF', daysAgo: 11 }),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.bo.id, bay: 2 }, { at: '10:30', by: people.ottoline })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.bo,
    deviceId: tabletId(2),
    from: '10:36',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 32.4, id: ids.LF },
      { wheel: 'RF', gauge: 32.2, id: '5590C3D8', frequencyMHz: 315, sensorAgeMonths: 3 },
      { wheel: 'RR', gauge: 32.5, id: ids.RR },
      { wheel: 'LR', gauge: 32.3, id: ids.LR },
    ],
    spare: 58.9,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 4, treadDepth32nds: 6, sensorAgeMonths: 78 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.bo, deviceId: tabletId(2), issuedAt: '10:52', confirmedAt: '10:55' })
  issueEstimate(pen, { at: '11:19', by: people.ottoline, readyAt: '15:00', look: 'charged' })
}
