import type { GaugedTire } from '@bayledger/reckoning/pressure/air-loss'
import { airAtSeaLevel } from '@bayledger/reckoning/pressure/air-pressure'
import type { Pressure } from '@bayledger/reckoning/quantity'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'

/** A tire at the sea with its gauge value and the °C of its air. */
export const gaugedAtSea = (value: number, unit: Pressure['unit'], celsius: number): GaugedTire => ({
  gauge: inKilopascals({ value, unit }),
  temperature: inKelvin({ value: celsius, unit: 'C' }),
  air: airAtSeaLevel,
})
