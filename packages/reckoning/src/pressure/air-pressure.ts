import { type AbsoluteKilopascals, absoluteKilopascals, type Meters } from '../units/measured.ts'

/** Of the standard atmosphere, 14.696 psi. */
export const airAtSeaLevel = absoluteKilopascals(101.325)

/**
 * Pressure of the open air at an altitude: 101.325 kPa at the sea, 83.43 at 1,609 m. Weather moves it about 2 kPa
 * (0.3 psi) either way, which a gauge does not show.
 *
 * @formula p = 101.325 · (1 − 0.0065 h / 288.15)^5.255876; 288.15 K at the sea, 6.5 K a kilometer, exponent g·M / (R·L)
 * @units geopotential m above the sea to kPa absolute
 * @limits −5,000 to 11,000 m, where the standard's lowest layer ends; up to 4,300 m, the highest road, geometric
 * altitude gives the same within 0.03 kPa
 * @source US Standard Atmosphere 1976, equal to ISO 2533:1975 there (constants read in two restatements)
 */
export const airPressureAtAltitude = (altitude: Meters): AbsoluteKilopascals =>
  absoluteKilopascals(airAtSeaLevel * (1 - (0.0065 * altitude) / 288.15) ** 5.255876)
