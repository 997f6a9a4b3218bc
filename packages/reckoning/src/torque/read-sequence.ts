import { type Reading, refused, taken } from '../reading.ts'
import { sequenceWords } from '../words/typed-text.ts'
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
  if (isCompound(typed, studs)) return refused('compound', shownAs(typed), sequenceWords.compound)
  const order = typeof typed === 'string' ? numbersIn(typed) : typed
  if (order === null) return refused('not-numbers', String(typed), sequenceWords.notNumbers)
  const doubt = sequenceDoubt(order, studs)
  return doubt === null ? taken(order) : refused(doubt.fault, sequenceText(order), words(doubt, studs))
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

const words = ({ fault, at }: SequenceDoubt, studs: number) => {
  switch (fault) {
    case 'wrong-count':
      return sequenceWords.wrongCount(at.length, studs)
    case 'no-such-fastener':
      return sequenceWords.noSuchFastener(at[0], studs)
    case 'named-twice':
      return sequenceWords.namedTwice(at[0], studs)
    case 'too-near':
      return sequenceWords.tooNear(at[0], at[1])
  }
}
