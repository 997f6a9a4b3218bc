/** What is read out to a customer who decides by telephone. Sums are formatted; `total` is that of what is agreed to. */
export type ReadOut = {
  readonly vehicle: string
  /** `insteadOf`: what an alternative replaces. */
  readonly offers: readonly {
    readonly title: string
    readonly price: string
    readonly insteadOf: string | null
  }[]
  readonly agreed: readonly string[]
  readonly total: string
  /** What was agreed to before and is taken back now. */
  readonly takenBack: readonly string[]
}

export type ConsentScriptWording = (of: ReadOut) => string
