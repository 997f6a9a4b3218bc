/**
 * Pressure of the open air in kPa at an altitude in meters: 101.325 at the sea, 83.43 at 1,609 m. Weather moves it
 * about 2 kPa either way. Standard atmosphere up to 11 km (ISO 2533:1975, equal to US Standard Atmosphere 1976):
 * 288.15 K at the sea, 6.5 K a kilometer, exponent g·M/(R·L).
 */
export const airPressureAtAltitude = (meters: number): number =>
  101.325 * (1 - (0.0065 * meters) / 288.15) ** 5.255876
