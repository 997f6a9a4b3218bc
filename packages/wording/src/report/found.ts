import type { Answer } from '@bayledger/reckoning/estimate'

/** A tire that is low: the wheel by name, what it holds and what the label asks for, as figures without a unit. */
export type LowTire = { readonly wheel: string; readonly psi: string; readonly label: string }

/** What page one says was found. Work is named by the title of its bundle, in lower case. */
export type ReportFoundWording = {
  readonly notIssued: string
  /** The word of a danger that no longer exists as the vehicle leaves. */
  readonly settled: string
  readonly onTheSpare: string
  readonly removes: (work: string, answer: Answer | null) => string
  readonly removesUnpriced: (work: string | null) => string
  readonly offer: (work: string, price: string | null) => string
  /** The technician's own finding, where they disagree with the computed one. */
  readonly ownFinding: (finding: string, reason: string) => string
  readonly theLight: string
  readonly causeOfTheLight: string
  readonly dangerExplainsIt: string
  readonly noCause: Readonly<Record<'nobody-looked' | 'was-off' | 'unexplained', string>>
  readonly done: (work: readonly string[]) => string
  readonly agreed: (work: readonly string[]) => string
  readonly nothingDone: string
  readonly alsoLow: (tires: readonly LowTire[]) => string
  readonly left: {
    readonly word: string
    /** Where tires are low. */
    readonly low: string
    readonly onTheLabel: (tires: readonly LowTire[]) => string
  }
  /** Behind the name of a reading, where it is the lowest of several. */
  readonly lowestOf: (count: number) => string
}
