import type { Temperature } from '@bayledger/reckoning/quantity'

export const tiresOptions = [
  { value: 'cold', label: 'Cold', detail: 'stood three hours or more' },
  { value: 'driven', label: 'Driven', detail: 'warm from the road' },
  { value: 'indoor-warmed', label: 'Warmed indoors', detail: 'stood in the bay' },
] as const

/** Degrees Fahrenheit as a pad shows them, to a tenth at most. */
export const fahrenheitOf = ({ value, unit }: Temperature): string =>
  String(unit === 'F' ? value : Math.round((value * 1.8 + 32) * 10) / 10)
