/**
 * Whether a text is the number under which goods are sold (GTIN): 12 to 14 digits, the last of which is the check digit
 * of the others. No sensor is known to have so many digits and no letter.
 *
 * @formula digits from the right, the check digit first, weigh 1, 3, 1, 3 …; the sum is a multiple of 10
 * @limits the short GTIN-8 is not told from a sensor's ID of eight digits
 * @source GS1 General Specifications, check digit (from memory)
 */
export const isProductCode = (text: string): boolean =>
  /^\d{12,14}$/.test(text) &&
  [...text].reverse().reduce((sum, digit, index) => sum + Number(digit) * (index % 2 === 0 ? 1 : 3), 0) %
    10 ===
    0
