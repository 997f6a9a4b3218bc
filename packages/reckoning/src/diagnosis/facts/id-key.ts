/**
 * A sensor ID's numeric value as upper-case hexadecimal text without leading zeros, whatever its notation:
 * vehicles print the same number in decimal that a reader prints in hexadecimal.
 */
export const idKey = (id: string, notation: 'hex' | 'decimal'): string =>
  BigInt(notation === 'hex' ? `0x${id}` : id)
    .toString(16)
    .toUpperCase()
