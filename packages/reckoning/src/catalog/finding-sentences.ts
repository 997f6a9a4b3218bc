import type { FindingCode } from '../diagnosis/finding-codes.ts'
import type { WheelPosition } from '../wheels.ts'

/**
 * The sentences that a customer reads for a finding. `one` is said of one wheel or of the whole vehicle, `many` of
 * several wheels; a form, named by the finding's figures, takes the place of both. Slots:
 * {wheel} {wheels} names; {name} a number as it is; {name:p} a pressure with the decimals of its unit.
 */
export type Sentence = { readonly one: string; readonly many?: string } & {
  readonly forms?: Readonly<Record<string, { readonly one: string; readonly many?: string }>>
}

export type FindingCatalog = {
  readonly language: string
  readonly wheels: Readonly<Record<WheelPosition, string>>
  readonly allFour: string
  readonly and: string
  readonly sentences: Readonly<Record<FindingCode, Sentence>>
}
