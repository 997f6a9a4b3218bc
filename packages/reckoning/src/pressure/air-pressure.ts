/** kPa in one psi, exact to seven digits (NIST SP 811, from memory). */
const kilopascalsPerPsi = 6.894757

/**
 * Pressure of the open air in kPa at an altitude in meters: 101.3 at the sea, 83.4 at 1,609 m.
 * Formula: International Standard Atmosphere, ISO 2533, troposphere; weather moves it about 2 kPa either way.
 */
export const airPressureAtAltitude = (meters: number): number =>
  14.696 * kilopascalsPerPsi * (1 - 6.8756e-6 * (meters / 0.3048)) ** 5.2559
