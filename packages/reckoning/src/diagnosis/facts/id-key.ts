/**
 * A sensor ID's numeric value as upper-case hexadecimal text without leading zeros, whatever its notation:
 * vehicles print the same number in decimal that a reader prints in hexadecimal. Text that is not in the notation
 * it is said to be in keeps its own spelling, and so equals no other ID.
 */
export const idKey = (id: string, notation: 'hex' | 'decimal'): string => {
  if (notation === 'hex') return id.toUpperCase().replace(/^0+(?=.)/, '')
  return /^\d+$/.test(id) ? BigInt(id).toString(16).toUpperCase() : `not decimal: ${id}`
}

/** An ID's key as it would be written in a notation. */
export const idText = (key: string, notation: 'hex' | 'decimal'): string =>
  notation === 'hex' ? key : BigInt(`0x${key}`).toString()
