import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Gloaming: the left rear sensor reads 6 psi under its tire. Authorized by telephone at 11:02; next, the part. */
export const writeT2606 = (pen: OrderPen): void => {
  const ids = sensorSets.gloaming
  writeUp(pen, {
    vehicle: 'gloaming',
    at: ['09:31', '09:33', '09:35', '09:36'],
    by: people.devin,
    waitsHere: false,
    promisedAt: '15:30',
    odometerMiles: 28_406,
    words:
      'No light, but the dash says 35 and a half for the left rear. My own gauge says 42. I left it overnight.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'telephone',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.rufus.id, bay: 4 }, { at: '09:50', by: people.devin })
  arrivalCheck(pen, {
    by: people.rufus,
    deviceId: tabletId(4),
    from: '10:04',
    outdoor: 27,
    overnightLow: 11,
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 36.1, id: ids.LF },
      { wheel: 'RF', gauge: 36.0, id: ids.RF },
      { wheel: 'RR', gauge: 41.8, id: ids.RR },
      { wheel: 'LR', gauge: 41.7, id: ids.LR, sensorPsi: 35.5 },
    ],
    spare: null,
    frequencyMHz: 433.92,
    valve: 'clamp-in',
    tires: { ageYears: 2, treadDepth32nds: 6, sensorAgeMonths: 44 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.rufus, deviceId: tabletId(4), issuedAt: '10:21', confirmedAt: '10:24' })
  issueEstimate(pen, { at: '10:38', by: people.devin, readyAt: '15:30', look: 'charged' })
  authorizeAll(pen, {
    by: people.devin,
    shownAt: '10:59',
    decidedAt: '11:02',
    channel: 'telephone',
  })
}
