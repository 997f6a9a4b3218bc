import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { takePhoto } from '../photos.ts'
import { tabletId } from '../places.ts'
import { workThrough } from '../work-through.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Finch: no sensors in its wheels, rotated at home. Reset; not yet proven, because it learns while the customer drives. */
export const writeT2605 = (pen: OrderPen): DemoEnd => {
  writeUp(pen, {
    vehicle: 'finch',
    at: ['08:40', '08:42', '08:43', '08:44'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '11:00',
    odometerMiles: 47_390,
    words: 'I rotated the tires at home and set them by the label. The light is on. I live two doors down.',
    reportedLight: 'solid',
    events: askedAbout({ kind: 'rotation', happened: true, daysAgo: 3 }),
    consentBy: 'in-person',
    lookFee: 'waived-with-work',
  })
  pen.write('order.assigned', { staffId: people.rufus.id, bay: 1 }, { at: '09:20', by: people.ottoline })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.rufus,
    deviceId: tabletId(1),
    from: '09:24',
    minutesDriven: 1,
    lastSet: { temperature: 27 },
    light: 'solid',
    wheels: [
      { wheel: 'LF', gauge: 36.2, id: null },
      { wheel: 'RF', gauge: 36, id: null },
      { wheel: 'RR', gauge: 33, id: null },
      { wheel: 'LR', gauge: 33.1, id: null },
    ],
    spare: 58.7,
    frequencyMHz: null,
    valve: 'plain',
    tires: { ageYears: 3, treadDepth32nds: 6, sensorAgeMonths: null },
    stored: {},
    codes: [],
  })
  takePhoto(
    pen,
    { photo: 'sidewall', subject: 'other', wheel: 'LF' },
    { at: '09:30', by: people.rufus, deviceId: tabletId(1) },
  )
  confirmFindings(pen, { by: people.rufus, deviceId: tabletId(1), issuedAt: '09:33', confirmedAt: '09:35' })
  issueEstimate(pen, { at: '09:50', by: people.ottoline, readyAt: '11:00', look: 'waived-with-work' })
  authorizeAll(pen, { by: people.ottoline, shownAt: '09:54', decidedAt: '09:55', channel: 'in-person' })
  workThrough(pen, {
    by: people.rufus,
    deviceId: tabletId(1),
    surroundings: { outdoor: 27, overnightLow: 11, tire: 50 },
    sensors: null,
    pressuresAt: '10:18',
    relearnedAt: '10:27',
    closing: {
      at: '10:28',
      drive: {
        at: '10:30',
        leftToCustomer:
          'It learns over 20 to 60 minutes of driving; the customer drives it and watches the light.',
      },
      afterDriveAt: '10:31',
    },
  })
  pen.write(
    'payment.noted',
    { money: pen.money({ amountCents: 2_730 }), method: 'card', back: null },
    { at: '10:44', by: people.ottoline },
  )
  return endOf(pen, {
    by: people.ottoline,
    sealedAt: '10:48',
    at: '10:50',
    odometerMiles: 47_390,
    signedBy: 'M. Okoye-Lane',
    releaseAgreedBy: people.greta,
  })
}
