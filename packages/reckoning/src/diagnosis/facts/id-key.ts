/**
 * A sensor ID's numeric value as upper-case hexadecimal text without leading zeros, whatever its notation:
 * vehicles print the same number in decimal that a reader prints in hexadecimal.
 */
export const idKey = (id: string, notation: 'hex' | 'decimal'): string =>
  notation === 'hex' ? id.toUpperCase().replace(/^0+(?=.)/, '') : BigInt(id).toString(16).toUpperCase()
