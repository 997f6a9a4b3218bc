/** What became of a file that somebody had checked: whether it is a report, byte for byte as the shop sealed it. */
export type CheckedFile =
  | { readonly verdict: 'genuine'; readonly number: string; readonly supersededBy: string | null }
  | { readonly verdict: 'changed'; readonly number: string }
  | { readonly verdict: 'unknown' }

/** What is said about a sealed report as a file. */
export type ReportsWording = {
  readonly checked: (checked: CheckedFile) => string
  /** The reason that a PDF reader shows beside the seal. */
  readonly sealReason: string
}
