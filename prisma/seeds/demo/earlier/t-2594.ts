import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { doSteps } from '../do-steps.ts'
import { type DemoEnd, endOf } from '../hand-back.ts'
import { wrenchInUse } from '../instruments.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { usualSeconds } from '../step-seconds.ts'
import { visitClock } from '../visit-clock.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** As it is printed on the sensor that went into the left rear wheel. */
export const t2594Sensor = '1FD70C3E'

/**
 * Moor B, on the last day of December: a new sensor at the left rear. The horn chirped, nobody read the stored IDs back or drove
 * it, and so nobody saw that the vehicle had kept the old one.
 */
export const writeT2594 = (pen: OrderPen): DemoEnd => {
  const ids = sensorSets.moorB
  const [by, deviceId] = [people.bo, tabletId(3)]
  writeUp(pen, {
    vehicle: 'moor-b',
    at: ['13:02', '13:04', '13:05', '13:06'],
    by: people.ottoline,
    waitsHere: true,
    promisedAt: '15:45',
    odometerMiles: 128_517,
    words: 'It flashes at every start. I have to be home by four.',
    reportedLight: 'flash-then-solid',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived-with-work',
  })
  arrivalCheck(pen, {
    by,
    deviceId,
    from: '13:15',
    outdoor: 35,
    overnightLow: 26,
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 31.9, id: ids.LF },
      { wheel: 'RF', gauge: 32, id: ids.RF },
      { wheel: 'RR', gauge: 31.8, id: ids.RR },
      { wheel: 'LR', gauge: 31.9, id: null },
    ],
    spare: 58.9,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 3, treadDepth32nds: 6, sensorAgeMonths: 88 },
    stored: ids,
    codes: [{ class: 'no-signal', wheel: 'LR', text: 'Wheel sensor, left rear: no signal' }],
  })
  confirmFindings(pen, { by, deviceId, issuedAt: '13:27', confirmedAt: '13:29' })
  issueEstimate(pen, { at: '13:36', by: people.ottoline, readyAt: '15:45', look: 'waived-with-work' })
  authorizeAll(pen, { by: people.ottoline, shownAt: '13:38', decidedAt: '13:40', channel: 'in-person' })
  const clock = visitClock((13 * 60 + 44) * 60)
  doSteps(pen, {
    by,
    deviceId,
    second: people.greta,
    surroundings: { outdoor: 35, overnightLow: 26, tire: 55 },
    sensors: { ids: { ...ids, LR: t2594Sensor }, frequencyMHz: 315 },
    parts: {
      LR: {
        id: t2594Sensor,
        partNumber: 'TS-315-C',
        lot: 'J5530',
        madeMonth: pen.calendar.inMonth('2025-07'),
      },
    },
    wrench: wrenchInUse(pen.calendar, { cyclesBefore: 1_220, clicksARound: 5 }),
    odometerMiles: 128_517,
    secondsOf: usualSeconds,
    pass: clock.pass,
    instead: ({ stepKey, closedBy }) => {
      if (closedBy === 'module.read')
        return {
          kind: 'step.set_aside',
          payload: {
            stepKey,
            reason: pen.personal('The horn chirped four times; the reader was in use elsewhere.'),
          },
        }
      if (closedBy === 'drive.done')
        return {
          kind: 'step.set_aside',
          payload: { stepKey, reason: pen.personal('The customer has to leave and drives it himself.') },
        }
      return null
    },
  })
  const at = clock.pass(240)
  pen.write(
    'payment.noted',
    { money: pen.money({ amountCents: 14_880 }), method: 'card', back: null },
    { at, by: people.ottoline },
  )
  return endOf(pen, {
    by: people.ottoline,
    sealedAt: clock.pass(120),
    at: clock.pass(180),
    odometerMiles: 128_517,
    signedBy: 'L. Fontaine-Reed',
    releaseAgreedBy: people.greta,
    retorqueAdvised: true,
  })
}
