import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/**
 * Pannier B: sealant in the right rear, and a sensor that still says 41 psi. The tire stays shut until its gas is let out
 * outdoors; the estimate waits for the fleet.
 */
export const writeT2619 = (pen: OrderPen): void => {
  const ids = sensorSets.pannierB
  const [by, deviceId] = [people.bo, tabletId(2)]
  writeUp(pen, {
    vehicle: 'pannier-b',
    at: ['08:24', '08:26', '08:27', '08:28'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '16:00',
    odometerMiles: 96_115,
    words:
      'Our driver used a can of sealant on the right rear on Friday and pumped it up. The light stays on.',
    reportedLight: 'solid',
    events: askedAbout({ kind: 'sealant', happened: true, wheel: 'RR', daysAgo: 3 }),
    consentBy: 'telephone',
    lookFee: 'charged',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by,
    deviceId,
    from: '08:53',
    minutesDriven: null,
    lastSet: null,
    light: 'solid',
    wheels: [
      { wheel: 'LF', gauge: 50.1, id: ids.LF },
      { wheel: 'RF', gauge: 49.9, id: ids.RF },
      { wheel: 'RR', gauge: 66, id: ids.RR, sensorPsi: 41, followsPressure: false, sealantSeen: true },
      { wheel: 'LR', gauge: 71.5, id: ids.LR },
    ],
    spare: { gauge: 69.4, id: null },
    frequencyMHz: 433.92,
    valve: 'clamp-in',
    tires: { ageYears: 4, treadDepth32nds: 6, sensorAgeMonths: 64 },
    stored: ids,
    codes: [],
  })
  const issued = confirmFindings(pen, { by, deviceId, issuedAt: '09:06', confirmedAt: '09:08' })
  pen.write(
    'stop.told',
    {
      diagnosisId: issued.id,
      codes: ['sealant-inside'],
      channel: 'telephone',
      answer: pen.personal('Understood. Nobody smokes near it. Send the price to our office.'),
    },
    { at: '09:26', by: people.ottoline },
  )
  issueEstimate(pen, { at: '09:33', by: people.ottoline, readyAt: '16:00', look: 'charged' })
  pen.write(
    'estimate.shown',
    { revision: 1, channel: 'telephone', linkId: null },
    { at: '09:41', by: people.ottoline },
  )
  pen.write(
    'contact.made',
    {
      channel: 'telephone',
      outcome: 'reached',
      words: pen.personal('The office calls back with an order number before anybody opens the tire.'),
    },
    { at: '09:44', by: people.ottoline },
  )
}
