import type { Temperature } from '@bayledger/reckoning/quantity'
import { temperatureIn } from '@bayledger/reckoning/units/temperature-units'

export const tiresOptions = [
  { value: 'cold', label: 'Cold', detail: 'stood three hours or more' },
  { value: 'driven', label: 'Driven', detail: 'warm from the road' },
  { value: 'indoor-warmed', label: 'Warmed indoors', detail: 'stood in the bay' },
] as const

/** Degrees Fahrenheit as a pad shows them, to a tenth at most. */
export const fahrenheitOf = (temperature: Temperature): string =>
  String(temperature.unit === 'F' ? temperature.value : Math.round(temperatureIn('F', temperature) * 10) / 10)
