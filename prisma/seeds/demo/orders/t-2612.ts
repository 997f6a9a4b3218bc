import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { workThrough } from '../work-through.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet C: somebody copied the right rear ID into the left rear sensor. It got one of its own; driven 23 minutes, light off. */
export const writeT2612 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.linnetC
  writeUp(pen, {
    vehicle: 'linnet-c',
    at: ['07:36', '07:38', '07:39', '07:40'],
    by: people.devin,
    waitsHere: true,
    promisedAt: '11:30',
    odometerMiles: 70_254,
    words: 'Another shop put in a sensor at the back in autumn. It flashes on most days since.',
    reportedLight: 'flash-then-solid',
    events: askedAbout({ kind: 'sensor-replaced-elsewhere', happened: true, wheel: 'LR', daysAgo: 80 }),
    consentBy: 'in-person',
    lookFee: 'charged',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.ines,
    deviceId: tabletId(5),
    from: '07:44',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 32.2, id: ids.LF },
      { wheel: 'RF', gauge: 32.4, id: ids.RF },
      { wheel: 'RR', gauge: 32.3, id: ids.RR, tries: 2 },
      { wheel: 'LR', gauge: 32.1, id: ids.RR, tries: 2, sensorAgeMonths: 4 },
    ],
    spare: 58.6,
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 3, treadDepth32nds: 7, sensorAgeMonths: 78 },
    stored: { ...ids, LR: '4B20A0DD' },
    codes: [],
  })
  confirmFindings(pen, { by: people.ines, deviceId: tabletId(5), issuedAt: '07:56', confirmedAt: '07:58' })
  issueEstimate(pen, { at: '08:12', by: people.devin, readyAt: '11:30', look: 'charged' })
  authorizeAll(pen, { by: people.devin, shownAt: '08:20', decidedAt: '08:22', channel: 'in-person' })
  workThrough(pen, {
    by: people.greta,
    deviceId: tabletId(2),
    surroundings: { outdoor: midMorning.outdoor, overnightLow: midMorning.overnightLow, tire: 54 },
    sensors: { ids, frequencyMHz: 433.92 },
    pressuresAt: '10:26',
    relearnedAt: '10:37',
    closing: {
      at: '10:38',
      drive: { minutes: 23, at: '11:05', odometerOut: 70_254, odometerIn: 70_268 },
      afterDriveAt: '11:07',
    },
  })
  pen.write(
    'payment.noted',
    { money: pen.money({ amountCents: 9_555 }), method: 'card', back: null },
    { at: '11:11', by: people.devin },
  )
  return endOf(pen, {
    by: people.devin,
    sealedAt: '11:13',
    at: '11:15',
    odometerMiles: 70_268,
    signedBy: 'D. Hallworth',
    releaseAgreedBy: null,
  })
}
