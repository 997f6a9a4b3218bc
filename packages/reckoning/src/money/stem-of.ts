import { type SpecificationSheet, sensorOf } from '../sheet.ts'

/** Offered where the sheet does not say which stem its sensors have. */
export const usualStem = 'snap-in'

/**
 * The stem of a vehicle's wheels: a plain one only where it listens to no sensor.
 *
 * @source This program's own rule.
 */
export const stemOf = (sheet: SpecificationSheet): 'snap-in' | 'clamp-in' | 'plain' =>
  sensorOf(sheet)?.stem ?? (sheet.system === 'direct' ? usualStem : 'plain')
