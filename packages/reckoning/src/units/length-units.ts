import type { Distance } from '../quantity.ts'
import { metersPerFoot, metersPerInch, metersPerMile } from './exact-factors.ts'
import { type Meters, type Millimeters, meters, millimeters } from './measured.ts'

/** An altitude in meters. 820 ft is 249.9 m. */
export const metersFromFeet = (feet: number): Meters => meters(feet * metersPerFoot)

/** A way driven, in miles; one typed in miles stays the figure as entered. 100 km is 62.1 mi. */
export const inMiles = ({ value, unit }: Distance): number =>
  unit === 'mi' ? value : (value * 1_000) / metersPerMile

/** A tread depth in mm, from 32nds of an inch. 2/32 in is 1.5875 mm. */
export const millimetersFrom32nds = (thirtySeconds: number): Millimeters =>
  millimeters((thirtySeconds / 32) * metersPerInch * 1_000)
