/** What is read out to a customer who decides by telephone. Sums and times are formatted; sums are with tax. */
export type ReadOut = {
  readonly vehicle: string
  /** What is dangerous and what explains the light, in whole sentences. */
  readonly found: readonly string[]
  /** `insteadOf`: what an alternative replaces. */
  readonly offers: readonly {
    readonly title: string
    readonly price: string
    readonly insteadOf: string | null
    /** On a comeback: what the warranty says of it, in whole sentences. */
    readonly cover: string | null
  }[]
  /** When it is ready after a Yes now; `null`: the estimate names no time. */
  readonly ready: string | null
  /** What is agreed to; `null` as long as nothing is answered. */
  readonly agreed: readonly string[] | null
  /** What the inspection costs with these answers; `null`: nothing. */
  readonly look: string | null
  /** The sum of what is agreed to and of the inspection. */
  readonly total: string
  /** That sum with what was agreed to before; `null`: nothing was, or some of it is taken back. */
  readonly withBefore: string | null
  /** What was agreed to before and is taken back now. */
  readonly takenBack: readonly string[]
}

export type ConsentScriptWording = (of: ReadOut) => string
