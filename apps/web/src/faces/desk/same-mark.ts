/** Letters and digits alone, in capitals: how a plate or a VIN is compared. */
export const mark = (typed: string): string => typed.toUpperCase().replace(/[^A-Z0-9]/g, '')

/** O and 0, I and 1 are read for one another. */
const blurred = (typed: string): string => mark(typed).replaceAll('O', '0').replaceAll('I', '1')

export const sameMark = (one: string | null, other: string): boolean =>
  one !== null && mark(other) !== '' && blurred(one) === blurred(other)
