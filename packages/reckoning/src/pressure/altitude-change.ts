import type { AbsoluteKilopascals, KilopascalsApart } from '../units/measured.ts'
import { kilopascalsOver } from '../units/pressure-difference.ts'
import { airAtSeaLevel } from './air-pressure.ts'

/**
 * How much less a gauge shows on the same tire, at the same temperature, where the open air is denser than where it
 * was set; negative where it is thinner. 33 psi set at 7,000 ft shows 3.1 psi less at 500 ft. Never let air out for
 * a trip into the mountains.
 *
 * @formula Pa here − Pa there
 * @units kPa absolute to kPa
 * @source ideal gas law (computed from definition)
 */
export const lostToAltitude = (there: AbsoluteKilopascals, here: AbsoluteKilopascals): KilopascalsApart =>
  kilopascalsOver(here, there)

/**
 * How much less than a gauge a sensor shows if it takes the air pressure at sea level for the one around it: 2.6 psi at
 * 5,280 ft, on every wheel alike. It is no fault.
 *
 * @formula 101.325 − Pa
 * @units kPa absolute to kPa
 * @limits only for sensors that refer to the sea; others measure the air around them or the vehicle corrects them
 * @source ideal gas law and standard atmosphere (computed from definition); that such sensors exist is common practice,
 * no source
 */
export const shownTooLowBySeaLevelSensor = (air: AbsoluteKilopascals): KilopascalsApart =>
  kilopascalsOver(airAtSeaLevel, air)
