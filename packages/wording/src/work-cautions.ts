import type {
  issuedWorkCautions,
  WorkCaution,
  WorkCautionNumber,
} from '@bayledger/reckoning/cautions/work-cautions'

type Issued = typeof issuedWorkCautions

/** Every version of every caution of the bay that was ever issued. Words of an issued version never change. */
export type WorkCautionsWording = {
  readonly [Number in WorkCautionNumber]: { readonly [Version in Issued[Number][number]]: string }
}

/** The words of a caution in the version that a step carries. */
export const workCautionWords = (
  words: WorkCautionsWording,
  { number, version }: WorkCaution,
): string | null => (words[number] as Readonly<Record<number, string>>)[version] ?? null
