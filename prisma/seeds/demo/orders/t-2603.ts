import { arrivalCheck, midMorning } from '../arrival-check.ts'
import { beginSensor } from '../begin-sensor.ts'
import { confirmFindings } from '../confirm-findings.ts'
import { authorizeAll, issueEstimate } from '../issue-estimate.ts'
import type { OrderPen } from '../order-pen.ts'
import { people } from '../people.ts'
import { tabletId } from '../places.ts'
import { sensorSets } from '../sensor-sets.ts'
import { askedAbout, writeUp } from '../write-up.ts'

/** As it is printed on the new sensor. */
export const t2603Sensor = '1FC40B27'

/** Moor A: two of four aged sensors are silent. Two authorized, the set of four deferred; the left front is being fitted. */
export const writeT2603 = (pen: OrderPen): void => {
  const ids = sensorSets.moorA
  writeUp(pen, {
    vehicle: 'moor-a',
    at: ['07:40', '07:42', '07:43', '07:44'],
    by: people.ottoline,
    waitsHere: false,
    promisedAt: '13:30',
    odometerMiles: 133_702,
    words:
      'It has flashed on and off for weeks, and now it does it at every start. It is an old car, keep it cheap.',
    reportedLight: 'flash-then-solid',
    events: askedAbout(),
    consentBy: 'telephone',
    lookFee: 'charged',
  })
  pen.write('order.assigned', { staffId: people.ines.id, bay: 6 }, { at: '08:44', by: people.ottoline })
  arrivalCheck(pen, {
    ...midMorning,
    by: people.ines,
    deviceId: tabletId(4),
    from: '08:48',
    minutesDriven: null,
    lastSet: null,
    light: 'flash-then-solid',
    wheels: [
      { wheel: 'LF', gauge: 31.6, id: null },
      { wheel: 'RF', gauge: 31.4, id: ids.RF },
      { wheel: 'RR', gauge: 31.5, id: null },
      { wheel: 'LR', gauge: 31.7, id: ids.LR },
    ],
    spare: 57.9,
    frequencyMHz: 315,
    valve: 'clamp-in',
    tires: { ageYears: 4, treadDepth32nds: 6, sensorAgeMonths: 126 },
    stored: ids,
    codes: [],
  })
  confirmFindings(pen, { by: people.ines, deviceId: tabletId(4), issuedAt: '09:05', confirmedAt: '09:09' })
  issueEstimate(pen, { at: '09:48', by: people.ottoline, readyAt: '13:30', look: 'charged' })
  authorizeAll(pen, { by: people.ottoline, shownAt: '10:03', decidedAt: '10:05', channel: 'telephone' })
  beginSensor(pen, {
    wheel: 'LF',
    by: people.ines,
    deviceId: tabletId(4),
    from: '11:08',
    sensorId: t2603Sensor,
    partNumber: 'TS-315-C',
    lot: 'K7714',
    madeMonth: pen.calendar.inMonth('2025-08'),
    kitPart: 'TK-C',
    kitLot: 'C118-4',
  })
}
