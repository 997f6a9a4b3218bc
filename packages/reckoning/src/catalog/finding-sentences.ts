import type { FindingCode } from '../diagnosis/finding-codes.ts'
import type { WheelPosition } from '../wheels.ts'

/** What is said of one wheel or of the whole vehicle, of several wheels, and where it reads better of all four. */
export type Wordings = { readonly one: string; readonly many?: string; readonly all?: string }

/**
 * The sentence that a customer reads for a finding. A form, named by the finding's figures, takes the place of the
 * ordinary wordings. Slots: {wheel} and {wheels} names of wheels; {name} a number as it is; {name:p} a pressure with
 * the decimals of its unit.
 */
export type Sentence = Wordings & { readonly forms?: Readonly<Record<string, Wordings>> }

export type FindingCatalog = {
  readonly language: string
  readonly wheels: Readonly<Record<WheelPosition, string>>
  readonly allFour: string
  readonly and: string
  readonly sentences: Readonly<Record<FindingCode, Sentence>>
}
