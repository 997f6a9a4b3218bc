import type { Role } from '@bayledger/ledger/role'
import { CsvApplied, CsvApply, CsvPreview, CsvWatch, csvFile, csvReply } from './csv.ts'
import { endpoint } from './endpoint.ts'
import type { ErrorCode } from './errors.ts'

/** The three routes by which one list of a shop goes out as CSV and comes back: write, preview, apply. */
export const csvEndpoints = <const Name extends string, const Problem extends ErrorCode = never>({
  name,
  words,
  path,
  roles,
  problems = [],
  proof,
}: {
  /** For operation ids, as `People`. */
  readonly name: Name
  /** For summaries, as "people". */
  readonly words: string
  readonly path: `/api/${string}`
  readonly roles: readonly Role[]
  /** What else may be said against the list or a file as a whole. */
  readonly problems?: readonly Problem[]
  /** Where an import needs a recent proof of who does it. */
  readonly proof?: 'recent'
}) => {
  const access = { who: 'desk', roles } as const
  const changing = { ...access, ...(proof === undefined ? {} : { proof }) } as const
  return {
    write: endpoint({
      operationId: `export${name}`,
      summary: `The shop's ${words}, as CSV.`,
      method: 'GET',
      path: `${path}.csv`,
      access,
      replies: { 200: csvReply },
      problems,
    }),
    preview: endpoint({
      operationId: `preview${name}Import`,
      summary: `What importing a CSV file of ${words} would add, change and refuse; changes nothing.`,
      method: 'POST',
      path: `${path}/import/preview`,
      access,
      query: CsvWatch,
      ...csvFile,
      replies: { 200: CsvPreview },
      problems: ['CSV_UNREADABLE', ...problems],
    }),
    apply: endpoint({
      operationId: `import${name}`,
      summary: 'Do what the preview of a CSV file showed, in one transaction.',
      method: 'POST',
      path: `${path}/import`,
      access: changing,
      once: true,
      query: CsvApply,
      ...csvFile,
      replies: { 200: CsvApplied },
      problems: ['CSV_UNREADABLE', 'CSV_PREVIEW_STALE', 'CSV_ROWS_REFUSED', ...problems],
    }),
  }
}

export type CsvEndpoints = ReturnType<typeof csvEndpoints>
