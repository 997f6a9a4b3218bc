import { type Reading, refused, taken } from '../reading.ts'
import { type SequenceDoubt, type SequenceFault, sequenceDoubt } from './sequence-rule.ts'

export type SequenceReadingFault = SequenceFault | 'not-numbers' | 'compound'

/**
 * Reads the vehicle maker's own order of tightening, typed with dashes, commas or blanks ("1-3-5-2-4") or given as
 * numbers. The maker's order governs, so one that goes from a fastener to its neighbor is not put right here; it is
 * refused, because such an order is nearly always a picture that numbers the fasteners as they are tightened.
 *
 * A compound pattern is refused too: one that tightens two at once ("1+6, 3+8"), or goes round in another order at
 * another round ("1-3-5-2-4 / 1-2-3-4-5"). Here a wheel is tightened one fastener at a time and each round in the same
 * order, and no source says which single order such a pattern comes to.
 *
 * @limits Fasteners are numbered clockwise, 1 nearest the valve.
 * @source The vehicle maker's page; what it is held against is common practice, no source (see `sequenceDoubt`).
 */
export const readSequence = (
  typed: string | readonly number[],
  studs: number,
): Reading<readonly number[], SequenceReadingFault> => {
  if (isCompound(typed, studs)) return refused('compound', { found: shownAs(typed), ...compoundWords })
  const order = typeof typed === 'string' ? numbersIn(typed) : typed
  if (order === null)
    return refused('not-numbers', {
      found: String(typed),
      allowed: 'whole numbers with dashes, commas or blanks between them, as 1-3-5-2-4',
      do: "Enter the order as the maker's page gives it, numbered clockwise from the valve.",
    })
  const doubt = sequenceDoubt(order, studs)
  return doubt === null
    ? taken(order)
    : refused(doubt.fault, { found: order.join('-'), ...words(doubt, order.length, studs) })
}

/**
 * An order of tightening as it is shown and typed: "1-3-5-2-4".
 *
 * @source This program's own notation.
 */
export const sequenceText = (order: readonly number[]): string => order.join('-')

const numbersIn = (typed: string): readonly number[] | null =>
  /^\s*\d{1,2}(?:(?:\s*[-–,·]\s*|\s+)\d{1,2})*\s*$/.test(typed)
    ? (typed.match(/\d+/g) ?? []).map(Number)
    : null

const shownAs = (typed: string | readonly number[]): string =>
  typeof typed === 'string' ? typed : sequenceText(typed)

/** Numbers with signs or words that group them, or each fastener as often as every other and more than once. */
const isCompound = (typed: string | readonly number[], studs: number): boolean => {
  if (typeof typed === 'string' && /\d\D*(?:[+&/;|)\]]|\band\b|\bthen\b)\D*\d/i.test(typed)) return true
  const order = typeof typed === 'string' ? numbersIn(typed) : typed
  if (order === null || order.length < 2 * studs) return false
  const times = order.length / studs
  return Array.from({ length: studs }, (_, index) => index + 1).every(
    (stud) => order.filter((named) => named === stud).length === times,
  )
}

const compoundWords = {
  allowed: 'one order, in which each fastener is tightened alone and once',
  do: "A pattern in pairs, or with an order of its own for each round, cannot be followed here, and no source says which single order replaces it. Enter the vehicle maker's single order if there is one. If there is none, do not work from this sheet: ask the vehicle maker.",
}

const words = ({ fault, at }: SequenceDoubt, length: number, studs: number) =>
  ({
    'wrong-count': {
      allowed: `each of the ${studs} fasteners once`,
      do: `${length} are named. Enter all ${studs}, or correct the count on the sheet.`,
    },
    'no-such-fastener': {
      allowed: `1 to ${studs}`,
      do: `There is no fastener ${at[0]} on a wheel of ${studs}. Read the maker's page again.`,
    },
    'named-twice': {
      allowed: `each of the ${studs} fasteners once`,
      do: `${at[0]} is named twice. Read the maker's page again.`,
    },
    'too-near': {
      allowed: 'an order that goes across the wheel at each step',
      do: `From ${at[0]} to ${at[1]} it goes to a near one. Number the fasteners clockwise from the valve, not as the page numbers its steps, and enter the order again. If the maker really asks for this, do not work from this sheet: ask the vehicle maker.`,
    },
  })[fault]
