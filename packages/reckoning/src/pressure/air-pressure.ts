import { type AbsoluteKilopascals, absoluteKilopascals, type Meters } from '../units/measured.ts'

/** Of the standard atmosphere, 14.696 psi. */
export const airAtSeaLevel = absoluteKilopascals(101.325)

/**
 * Pressure of the open air in kPa at an altitude in meters: 101.325 at the sea, 83.43 at 1,609 m. Weather moves it
 * about 2 kPa either way. Standard atmosphere up to 11 km (ISO 2533:1975, equal to US Standard Atmosphere 1976):
 * 288.15 K at the sea, 6.5 K a kilometer, exponent g·M/(R·L).
 */
export const airPressureAtAltitude = (altitude: Meters): AbsoluteKilopascals =>
  absoluteKilopascals(airAtSeaLevel * (1 - (0.0065 * altitude) / 288.15) ** 5.255876)
