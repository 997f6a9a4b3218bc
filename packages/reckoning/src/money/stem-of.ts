import type { SpecificationSheet } from '../sheet.ts'

/** Offered where the sheet does not say which stem its sensors have. */
export const usualStem = 'snap-in'

/**
 * The stem of a vehicle's wheels: a plain one only where it listens to no sensor.
 *
 * @source This program's own rule.
 */
export const stemOf = ({ system, sensor }: SpecificationSheet): 'snap-in' | 'clamp-in' | 'plain' =>
  sensor?.stem ?? (system === 'direct' ? usualStem : 'plain')
