/** Page one of a report: its headings, the facts under the shop's name, and what a signature and the code mean. */
export type ReportPageOneWording = {
  readonly facts: {
    readonly order: string
    readonly report: string
    readonly date: string
    readonly vehicle: string
    readonly plate: string
    readonly vin: string
    readonly odometer: Readonly<Record<'came' | 'drove' | 'left', string>>
    /** A reading that was unlikely and was confirmed says so behind its label. */
    readonly readTwice: (label: string) => string
    readonly notReadAgain: string
  }
  readonly call: (telephone: string) => string
  readonly signatures: Readonly<Record<'customer' | 'shop', string>>
  readonly signing: string
  readonly check: (address: string) => string
  readonly titles: Readonly<
    Record<'canDrive' | 'told' | 'found' | 'did' | 'notDone' | 'fixed' | 'next' | 'genuine', string>
  >
  readonly nothingRefused: string
  readonly quoted: (words: string) => string
  /** Ends a text that was cut. */
  readonly further: string
  readonly more: (count: number) => string
  readonly codeAlt: (address: string) => string
}
