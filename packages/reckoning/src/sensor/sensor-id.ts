/** Vehicles print the number in decimal that a reader prints in hexadecimal. */
export type IdNotation = 'hex' | 'decimal'

/**
 * A sensor ID's numeric value as upper-case hexadecimal text without leading zeros, whatever its notation: two IDs
 * are one sensor's where their keys are equal. Text that is not in the notation it is said to be in keeps its own
 * spelling, and so equals no other ID.
 *
 * @formula the number that the digits mean, to base 16 or base 10
 * @source computed from definition
 */
export const idKey = (id: string, notation: IdNotation): string => {
  if (notation === 'hex') return id.toUpperCase().replace(/^0+(?=.)/, '')
  return /^\d+$/.test(id) ? BigInt(id).toString(16).toUpperCase() : `not-decimal:${id}`
}

/**
 * An ID's key as it would be written in a notation.
 *
 * @limits a key as `idKey` gives it of a text in its notation
 * @source computed from definition
 */
export const idText = (key: string, notation: IdNotation): string =>
  notation === 'hex' ? key : BigInt(`0x${key}`).toString()

/**
 * A hexadecimal ID in the one spelling under which a shop lists it: upper case, eight digits at least, as most readers
 * show it. The same sensor typed with fewer or more leading zeros is found under it.
 *
 * @source this program's own rule; eight digits (32 bits) are common practice, no source
 */
export const listedId = (id: string): string => idKey(id, 'hex').padStart(8, '0')

/**
 * Whether an ID can be a sensor's. All zeros or all ones is what a reader shows when it read none.
 *
 * @source common practice, no source
 */
export const isOfASensor = (id: string): boolean => !/^(0+|(ff){4,})$/i.test(id)
