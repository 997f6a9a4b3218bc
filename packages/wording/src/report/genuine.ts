/** How anyone can check that a report is the one that was issued. */
export type ReportGenuineWording = {
  readonly title: string
  readonly sealed: (address: string) => string
  /** The fingerprint of the signature's key, in groups of eight digits, and where the shop publishes it. */
  readonly key: (fingerprint: string, address: string) => string
  /** Whether a time-stamp authority, named by its host, has confirmed when the file was sealed; a later confirmation is at the address. */
  readonly stamp: (
    of: { readonly is: 'within' | 'missing'; readonly authority: string },
    address: string,
  ) => string
  readonly composed: (of: {
    readonly moment: string
    readonly entry: number
    readonly hash: string
    readonly template: number
    readonly supersedes: string | null
  }) => string
}
