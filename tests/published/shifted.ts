import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'

/** What a gauge shows in psi at other °F, and at other feet where they are given, of a tire that leaks nothing. */
export const shownPsi = (psi: number, from: number, to: number, setAt = 0, nowAt = setAt): number =>
  kilopascalsIn(
    'psi',
    shiftPressure({
      gauge: inKilopascals({ value: psi, unit: 'psi' }),
      from: inKelvin({ value: from, unit: 'F' }),
      to: inKelvin({ value: to, unit: 'F' }),
      airBefore: airPressureAtAltitude(metersFromFeet(setAt)),
      airAfter: airPressureAtAltitude(metersFromFeet(nowAt)),
    }),
  )

/** The same in kPa and °C at the sea. */
export const shownKilopascals = (kPa: number, from: number, to: number): number =>
  shiftPressure({
    gauge: inKilopascals({ value: kPa, unit: 'kPa' }),
    from: inKelvin({ value: from, unit: 'C' }),
    to: inKelvin({ value: to, unit: 'C' }),
    airBefore: airPressureAtAltitude(metersFromFeet(0)),
    airAfter: airPressureAtAltitude(metersFromFeet(0)),
  })
