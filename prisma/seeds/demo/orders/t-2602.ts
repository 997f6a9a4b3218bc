import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { takePhoto } from '../photos.ts'
import { tabletId } from '../places.ts'
import { demoId } from '../seeded.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Tarn A: the right rear sensor is silent. The estimate went out by link at 09:12 and waits for its answer. */
export const writeT2602 = (pen: OrderPen): void => {
  const ids = sensorSets.tarnA
  writeUp(pen, {
    vehicle: 'tarn-a',
    at: ['07:52', '07:53', '07:55', '07:56'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '14:00',
    odometerMiles: 94_318,
    words: 'The tire light blinks for about a minute when I start it, then it just stays on. Since Friday.',
    reportedLight: 'flash-then-solid',
    events: askedAbout(),
    consentBy: 'telephone',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.bo.id, bay: 2 }, { at: '08:20', by: people.ottoline })
  arrivalCheck(pen, {
    by: people.bo,
    deviceId: tabletId(2),
    from: '08:31',
    outdoor: 27,
    overnightLow: 11,
    minutesDriven: null,
    lastSet: { temperature: 50 },
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 32.8, id: ids.LF },
      { wheel: 'RF', gauge: 32.6, id: ids.RF },
      { wheel: 'RR', gauge: 32.7, id: null },
      { wheel: 'LR', gauge: 32.9, id: ids.LR },
    ],
    spare: 56.5,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 70 },
    stored: ids,
    codes: [{ class: 'no-signal', wheel: 'RR', text: 'Wheel sensor, right rear: no signal' }],
  })
  const label = takePhoto(
    pen,
    { photo: 'door-label', subject: 'placard', wheel: null },
    { at: '08:37', by: people.bo, deviceId: tabletId(2) },
  )
  confirmFindings(pen, { by: people.bo, deviceId: tabletId(2), issuedAt: '08:47', confirmedAt: '08:49' })
  const revision = issueEstimate(pen, { at: '09:06', by: people.ottoline, readyAt: '14:00', look: 'charged' })
  pen.write('photo.shared', { photoId: label.id, shared: true }, { at: '09:10', by: people.ottoline })
  pen.write(
    'estimate.shown',
    { revision, channel: 'link', linkId: t2602Link.linkId },
    { at: '09:12', by: people.ottoline },
  )
}

/** The link that the customer of T-2602 holds: sent 09:12, opened 09:20, good for seven days. */
export const t2602Link = {
  linkId: demoId('link/T-2602'),
  sentAt: '09:12',
  openingId: demoId('link-opening/T-2602/1'),
  openedAt: '09:20',
  sentBy: people.ottoline,
} as const
