type Counts = {
  readonly added: number
  readonly changed: number
  readonly same: number
  readonly refused: number
}

/** What a file would do, or did, in one line. */
export const csvCounts = ({ added, changed, same, refused }: Counts): string =>
  `${added} added, ${changed} changed, ${same} the same, ${refused} refused.`
