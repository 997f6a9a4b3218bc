/**
 * The 17 products of each character's worth and its place's weight; the ninth place, which holds the check digit
 * itself, weighs nothing. A character that no VIN has is worth nothing.
 *
 * @formula product = worth × weight; letters are worth A 1 to H 8, J 1 to N 5, P 7, R 9, S 2 to Z 9
 * @limits a VIN as `readVin` takes it: 17 capital letters and digits
 * @source 49 CFR 565, tables of worths and weights (read in a copy of the text before 2008)
 */
export const vinProducts = (vin: string): number[] =>
  weights.map((weight, index) => weight * (worths[vin[index] ?? ''] ?? 0))

/**
 * The ninth character that follows from the other sixteen.
 *
 * @formula the sum of the 17 products modulo 11; X means 10
 * @limits a VIN as `readVin` takes it: 17 capital letters and digits
 * @source 49 CFR 565, check digit (read in a copy of the text before 2008)
 */
export const vinCheckDigit = (vin: string): string => {
  const remainder = vinProducts(vin).reduce((sum, product) => sum + product, 0) % 11
  return remainder === 10 ? 'X' : String(remainder)
}

const worthsFrom = (characters: string, first: number): [string, number][] =>
  [...characters].map((character, index) => [character, first + index])

const worths: Readonly<Record<string, number>> = Object.fromEntries([
  ...worthsFrom('0123456789', 0),
  ...worthsFrom('ABCDEFGH', 1),
  ...worthsFrom('JKLMN', 1),
  ...worthsFrom('P', 7),
  ...worthsFrom('R', 9),
  ...worthsFrom('STUVWXYZ', 2),
])

const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const
