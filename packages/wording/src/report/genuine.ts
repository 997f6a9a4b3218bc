/** How anyone can check that a report is the one that was issued. */
export type ReportGenuineWording = {
  readonly title: string
  readonly sealed: (address: string) => string
  /** The fingerprint of the signature's key, in groups of eight digits, and where the shop publishes it. */
  readonly key: (fingerprint: string, address: string) => string
  readonly composed: (of: {
    readonly moment: string
    readonly entry: number
    readonly hash: string
    readonly template: number
    readonly supersedes: string | null
  }) => string
}
