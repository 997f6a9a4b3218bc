/**
 * Factors that are exact by definition: inch and pound (international yard and pound agreement, 1959), standard
 * gravity (3rd General Conference on Weights and Measures, 1901), foot and mile from the inch. The rest follows.
 */
export const metersPerInch = 0.0254
export const metersPerFoot = 0.3048
export const metersPerMile = 1_609.344

export const kilogramsPerPound = 0.45359237

const newtonsPerPoundForce = kilogramsPerPound * 9.80665

/** 6.894757293168… kPa. */
export const kilopascalsPerPsi = newtonsPerPoundForce / metersPerInch ** 2 / 1_000

/** 1.3558179483314… N·m. */
export const newtonMetersPerPoundFoot = newtonsPerPoundForce * metersPerFoot

/** 0.1129848290276… N·m. */
export const newtonMetersPerPoundInch = newtonsPerPoundForce * metersPerInch
