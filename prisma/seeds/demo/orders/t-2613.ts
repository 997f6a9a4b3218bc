import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Tarn C: everything measured is right and the car still reports a fault. Driven a week without the added devices. */
export const writeT2613 = (pen: OrderPen): void => {
  const ids = sensorSets.tarnC
  writeUp(pen, {
    vehicle: 'tarn-c',
    at: ['07:30', '07:32', '07:33', '07:34'],
    by: people.devin,
    waitsHere: false,
    promisedAt: '10:30',
    odometerMiles: 88_506,
    words: 'It flashes, then stays on. I got a dash camera and one of those fast chargers in December.',
    reportedLight: 'flash-then-solid',
    events: askedAbout(
      { kind: 'dash-cam-added', happened: true, daysAgo: 30 },
      { kind: 'charger-added', happened: true, daysAgo: 30 },
    ),
    consentBy: 'telephone',
    lookFee: 'charged',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.ines,
    deviceId: tabletId(5),
    from: '08:20',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 34.3, id: ids.LF },
      { wheel: 'RF', gauge: 34.1, id: ids.RF },
      { wheel: 'RR', gauge: 34.2, id: ids.RR },
      { wheel: 'LR', gauge: 34.4, id: ids.LR },
    ],
    spare: 58.7,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 70 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.ines, deviceId: tabletId(5), issuedAt: '08:36', confirmedAt: '08:41' })
  issueEstimate(pen, { at: '08:55', by: people.devin, readyAt: '10:30', look: 'charged' })
  pen.write(
    'estimate.shown',
    { revision: 1, channel: 'telephone', linkId: null },
    { at: '09:20', by: people.devin },
  )
  pen.write(
    'contact.made',
    {
      channel: 'telephone',
      outcome: 'reached',
      words: pen.personal('Drives a week without camera and charger. Nothing sold. Comes back on the 19th.'),
    },
    { at: '09:24', by: people.devin },
  )
  pen.write(
    'wait.set',
    { reason: 'trial-drive', until: pen.calendar.atOn('2026-01-19', '09:00') },
    { at: '09:26', by: people.devin },
  )
}
