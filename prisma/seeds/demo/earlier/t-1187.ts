import { arrivalCheck } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet G, in October 2024: looked at and sold before anything was offered. One of its wheels is on Tarn D now. */
export const writeT1187 = (pen: OrderPen): undefined => {
  const ids = sensorSets.linnetG
  writeUp(pen, {
    vehicle: 'linnet-g',
    at: ['09:10', '09:12', '09:13', '09:14'],
    by: people.devin,
    waitsHere: true,
    promisedAt: '10:15',
    odometerMiles: 58_204,
    words: 'I am selling it. Look at the tires and the sensors once more, please.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    by: people.ines,
    deviceId: tabletId(4),
    from: '09:25',
    outdoor: 52,
    overnightLow: 43,
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 32.8, id: ids.LF },
      { wheel: 'RF', gauge: 32.6, id: ids.RF },
      { wheel: 'RR', gauge: 32.9, id: ids.RR },
      { wheel: 'LR', gauge: 32.7, id: ids.LR },
    ],
    spare: { gauge: 59.2, id: null },
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 3, madeOn: '2021-07-15', treadDepth32nds: 7, sensorAgeMonths: 63 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.ines, deviceId: tabletId(4), issuedAt: '09:36', confirmedAt: '09:38' })
  pen.write(
    'order.withdrawn',
    { reason: 'customer', words: pen.personal('The buyer came while it stood here and took it as it is.') },
    { at: '09:46', by: people.devin },
  )
}
