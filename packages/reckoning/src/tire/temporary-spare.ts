import { overallDiameter } from './geometry.ts'
import type { MeasuredTireSize } from './tire-size.ts'

/**
 * The usual limits of a temporary spare. What its sidewall and the vehicle's handbook say governs.
 *
 * @units mph, km/h, miles, psi
 * @source 50 mph: a school book's page on temporary spares (read); 50 miles: a motoring page (read); 60 psi: a repair page
 * (read); 80 km/h beside 50 mph: the same (read)
 */
export const temporarySpareLimits = {
  milesPerHour: 50,
  kilometersPerHour: 80,
  miles: 50,
  psi: 60,
} as const

/**
 * How much smaller in diameter a spare is than the tire that it stands in for. On a driven axle its wheel turns that much
 * faster all the way, so that a spare of another diameter goes on the axle that is not driven, where there is one.
 *
 * @formula 100 · (1 − diameter of the spare / diameter of the tire)
 * @units %
 * @limits nominal diameters
 * @source the circle (computed from definition); which axle: common practice, no source
 */
export const spareSmallerBy = (tire: MeasuredTireSize, spare: MeasuredTireSize): number =>
  100 * (1 - overallDiameter(spare) / overallDiameter(tire))
