import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { workThrough } from '../work-through.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet A: four tires low from cold and four months' seepage. Set, driven 22 minutes, light off; finished 08:52. */
export const writeT2601 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.linnetA
  writeUp(pen, {
    vehicle: 'linnet-a',
    at: ['07:08', '07:10', '07:11', '07:12'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '09:00',
    odometerMiles: 52_613,
    words:
      'The tire light came on this morning and stays on. I had the air done in September. I live around the corner.',
    reportedLight: 'solid',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived-with-work',
  })
  pen.write('order.assigned', { staffId: people.rufus.id, bay: 1 }, { at: '07:13', by: people.ottoline })
  arrivalCheck(pen, {
    by: people.rufus,
    deviceId: tabletId(1),
    from: '07:15',
    outdoor: 19,
    overnightLow: 11,
    minutesDriven: 2,
    lastSet: { temperature: 68 },
    light: 'solid',
    wheels: [
      { wheel: 'LF', gauge: 24.5, id: ids.LF },
      { wheel: 'RF', gauge: 24.3, id: ids.RF },
      { wheel: 'RR', gauge: 24.6, id: ids.RR },
      { wheel: 'LR', gauge: 24.4, id: ids.LR },
    ],
    spare: 52.8,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 78 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.rufus, deviceId: tabletId(1), issuedAt: '07:24', confirmedAt: '07:26' })
  issueEstimate(pen, { at: '07:31', by: people.ottoline, readyAt: '09:00', look: 'waived-with-work' })
  authorizeAll(pen, {
    by: people.ottoline,
    shownAt: '07:34',
    decidedAt: '07:35',
    channel: 'in-person',
  })
  workThrough(pen, {
    by: people.rufus,
    deviceId: tabletId(1),
    pressuresAt: '08:09',
    surroundings: { outdoor: 19, overnightLow: 11, tire: 48 },
    sensors: { ids: ids, frequencyMHz: 433.92 },
    closing: {
      at: '08:15',
      drive: { minutes: 22, at: '08:42', odometerOut: 52_613, odometerIn: 52_625 },
      afterDriveAt: '08:43',
    },
  })
  return endOf(pen, {
    by: people.ottoline,
    sealedAt: '08:50',
    at: '08:52',
    odometerMiles: 52_625,
    signedBy: 'P. Lindqvist-Roe',
    releaseAgreedBy: null,
  })
}
