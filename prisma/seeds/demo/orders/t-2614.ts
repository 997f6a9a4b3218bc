import { customerCaution } from '@bayledger/reckoning/cautions/customer-cautions'
import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import { declineAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { takePhoto } from '../photos.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { lookFeeCents } from '../settings.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Haywain B: a bulge in the left front sidewall. Told "do not drive", refused before a witness, taken away. */
export const writeT2614 = (pen: OrderPen): DemoEnd => {
  const { SP, ...ids } = sensorSets.haywainB
  writeUp(pen, {
    vehicle: 'haywain-b',
    at: ['08:32', '08:34', '08:35', '08:36'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '10:30',
    odometerMiles: 83_915,
    words: 'No light. It shakes since I hit a curb on Saturday. I have to be on the road by eleven.',
    reportedLight: 'off',
    events: askedAbout({ kind: 'collision', happened: true, wheel: 'LF', daysAgo: 2 }),
    consentBy: 'in-person',
    lookFee: 'waived-with-work',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.bo,
    deviceId: tabletId(3),
    from: '09:50',
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 54.4, id: ids.LF, tireDamage: ['bulge'] },
      { wheel: 'RF', gauge: 54.1, id: ids.RF },
      { wheel: 'RR', gauge: 64.3, id: ids.RR },
      { wheel: 'LR', gauge: 64, id: ids.LR },
    ],
    spare: { gauge: 63.8, id: SP },
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 4, treadDepth32nds: 7, sensorAgeMonths: 56 },
    stored: { ...ids, SP },
    codes: [],
  })
  const bulge = takePhoto(
    pen,
    { photo: 'bulge', subject: 'damage', wheel: 'LF' },
    { at: '09:56', by: people.bo, deviceId: tabletId(3) },
  )
  const issued = confirmFindings(pen, {
    by: people.bo,
    deviceId: tabletId(3),
    issuedAt: '10:02',
    confirmedAt: '10:04',
  })
  pen.write('photo.shared', { photoId: bulge.id, shared: true }, { at: '10:07', by: people.ottoline })
  pen.write(
    'stop.told',
    {
      diagnosisId: issued.id,
      codes: ['tire-unsafe'],
      channel: 'in-person',
      answer: pen.personal('I saw the bulge. A new tire is too much today, I will drive it home.'),
    },
    { at: '10:09', by: people.ottoline },
  )
  issueEstimate(pen, { at: '10:11', by: people.ottoline, readyAt: '11:30', look: 'waived-with-work' })
  declineAll(pen, { by: people.ottoline, shownAt: '10:13', decidedAt: '10:16', channel: 'in-person' })
  pen.write(
    'refusal.recorded',
    {
      codes: ['tire-unsafe'],
      cautionShown: customerCaution('CT-04'),
      proof: { kind: 'refused-to-sign', witness: pen.agreedBy(people.devin) },
      leaves: 'as-it-is',
    },
    { at: '10:18', by: people.ottoline },
  )
  pen.write(
    'payment.noted',
    { money: pen.money({ amountCents: lookFeeCents }), method: 'card', back: null },
    { at: '10:24', by: people.ottoline },
  )
  return endOf(pen, {
    by: people.ottoline,
    sealedAt: '10:28',
    at: '10:31',
    odometerMiles: 83_915,
    signedBy: null,
    releaseAgreedBy: people.greta,
  })
}
