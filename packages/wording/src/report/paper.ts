/** What the paper itself says: its name as a file, its foot lines, and the drawing and table of the wheels. */
export type ReportPaperWording = {
  readonly title: (report: string, order: string) => string
  readonly pageOneBookmark: string
  readonly foot: (of: {
    readonly report: string
    readonly order: string
    readonly page: number
    readonly pages: number
    readonly composedAt: string
    readonly timeZone: string
  }) => string
  readonly ledgerFoot: (entry: number, hash: string) => string
  /** The headings of the table of wheels on page one. */
  readonly wheels: Readonly<
    Record<'wheel' | 'before' | 'after' | 'label' | 'sensorBefore' | 'sensorAfter', string>
  >
  readonly plan: {
    readonly drawing: string
    readonly before: string
    readonly after: string
    /** The box is too narrow to say why there is no reading. */
    readonly noReading: string
    /** A wheel for whoever does not see the drawing; `mark` is the word of a danger or of the cause. */
    readonly wheel: (of: {
      readonly name: string
      readonly mark: string | null
      readonly before: string
      readonly after: string
      readonly label: string
    }) => string
  }
}
