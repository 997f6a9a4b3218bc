import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { confirmFindings } from '../confirm-findings.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** Linnet E: all is right, and its owner wants wheels without sensors. We do not silence a working system, and say what we can do. */
export const writeT2617 = (pen: OrderPen): void => {
  const ids = sensorSets.linnetE
  writeUp(pen, {
    vehicle: 'linnet-e',
    at: ['09:12', '09:14', '09:15', '09:16'],
    by: people.devin,
    waitsHere: true,
    promisedAt: '10:30',
    odometerMiles: 44_806,
    words: 'No light. I have winter wheels without sensors in the back. Put them on and make it stay quiet.',
    reportedLight: 'off',
    events: askedAbout(),
    consentBy: 'in-person',
    lookFee: 'waived',
  })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.rufus,
    deviceId: tabletId(1),
    from: '09:38',
    minutesDriven: null,
    lastSet: null,
    light: 'off',
    wheels: [
      { wheel: 'LF', gauge: 32.6, id: ids.LF },
      { wheel: 'RF', gauge: 32.4, id: ids.RF },
      { wheel: 'RR', gauge: 32.7, id: ids.RR },
      { wheel: 'LR', gauge: 32.5, id: ids.LR },
    ],
    spare: { gauge: 58.4, id: null },
    frequencyMHz: 433.92,
    valve: 'snap-in',
    tires: { ageYears: 2, treadDepth32nds: 8, sensorAgeMonths: 78 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.rufus, deviceId: tabletId(1), issuedAt: '09:45', confirmedAt: '09:46' })
  pen.write(
    'order.refused',
    {
      reason: 'would-disable-safety-system',
      words: pen.personal(
        'We do not fit wheels that silence a working warning. Offered: sensors for the winter wheels, his own wheels with winter tires, or the wheels back as they are.',
      ),
    },
    { at: '09:55', by: people.devin },
  )
}
