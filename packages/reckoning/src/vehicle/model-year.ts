/**
 * The model year that a VIN for North America names at its tenth place, or `null` where it names none. Codes repeat
 * every 30 years; the seventh place tells the round: a digit from 1980 to 2009, a letter from 2010 to 2039. That
 * holds for passenger cars, and for multipurpose vehicles and trucks to 10,000 lb (49 CFR 565.15(b) and (d); codes
 * read in published tables). Heavier vehicles are outside this shop's work.
 */
export const modelYear = (vin: string): number | null => {
  const code = vin[9]
  const seventh = vin[6]
  const offset = code === undefined || code === '' ? -1 : yearCodes.indexOf(code)
  if (offset < 0 || seventh === undefined) return null
  return (/\d/.test(seventh) ? 1980 : 2010) + offset
}

/** In order from the first year of a round: no I, O, Q, U, Z and no 0. */
const yearCodes = 'ABCDEFGHJKLMNPRSTVWXY123456789'
