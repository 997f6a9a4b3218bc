type Counts = {
  readonly added: number
  readonly changed: number
  readonly same: number
  readonly refused: number
}

/** What a file would do, or did, in one line. */
export const csvCounts = ({ added, changed, same, refused }: Counts): string =>
  `${added} added, ${changed} changed, ${same} the same, ${refused} refused.`

type Progress = { readonly step: 'comparing' | 'writing'; readonly done: number; readonly of: number }

/** How far an import has come: "3,250 of 10,000 rows compared". */
export const csvProgress = ({ step, done, of }: Progress): string =>
  `${done.toLocaleString('en-US')} of ${of.toLocaleString('en-US')} rows ${step === 'comparing' ? 'compared' : 'written'}`
