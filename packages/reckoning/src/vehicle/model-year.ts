/**
 * The model year that a VIN names at its tenth place, or `null` where it names none (0, U and Z are no year codes).
 * Codes repeat every 30 years; the seventh place determines the cycle: a digit from 1980 to 2009, a letter from 2010 to
 * 2039.
 *
 * @formula year = 1980 or 2010 + place of the code in A–Y without I, O, Q, U, then 1–9
 * @limits holds for the vehicles of `vinWords.modelYearHoldsFor` only
 * @source 49 CFR 565.15(b) (letter at place 7: read), 565.6 as of October 2000 (digit before: read); the codes read in
 * published tables
 */
export const modelYear = (vin: string): number | null => {
  const offset = yearCodes.indexOf(vin[9] ?? 'none')
  const seventh = vin[6]
  if (offset < 0 || seventh === undefined) return null
  return (/\d/.test(seventh) ? 1980 : 2010) + offset
}

const yearCodes = 'ABCDEFGHJKLMNPRSTVWXY123456789'
