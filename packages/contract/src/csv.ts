import * as z from 'zod/mini'
import type { BinaryReply } from './endpoint.ts'
import { Digest, Id } from './identity.ts'

/** At most so many rows are read from one file, the header not counted. */
export const mostCsvRows = 20_000

/** At most so many rows of each sort are listed in a preview; the counts and the digest cover all of them. */
export const mostCsvRowsListed = 1_000

/** The most rows that a file may have are read and applied well within this, on a slow machine too. */
export const csvPatienceSeconds = 300

/** An import takes the file's bytes as they are, so that a wrong encoding is said and not guessed. */
export const csvFile = {
  body: z.instanceof(Uint8Array),
  bodyIs: 'application/octet-stream',
  bodyLimitBytes: 16 * 1024 * 1024,
  patienceSeconds: csvPatienceSeconds,
} as const

/** An export: UTF-8 with a byte-order mark, RFC 4180. */
export const csvReply = { contentType: 'text/csv' } as const satisfies BinaryReply

/** What is wrong in a row. `column` is null where the row as a whole is. */
export const CsvFault = z.strictObject({
  column: z.nullable(z.string()),
  found: z.string(),
  reason: z.string(),
  do: z.string(),
})
export type CsvFault = z.infer<typeof CsvFault>

/** `row` counts as a spreadsheet does: the header is row 1. `name` is what the row is called. */
const rowNumber = z.int().check(z.gte(1))

export const CsvAddedRow = z.strictObject({ row: rowNumber, name: z.string() })
export const CsvChangedRow = z.strictObject({
  row: rowNumber,
  name: z.string(),
  fields: z.array(z.strictObject({ column: z.string(), before: z.string(), after: z.string() })),
})
export const CsvRefusedRow = z.strictObject({ row: rowNumber, name: z.string(), faults: z.array(CsvFault) })

const csvCounts = { added: z.int(), changed: z.int(), same: z.int(), refused: z.int() }

/** What an import would do. Applying it names `digest`, so that nothing is applied that was not shown. */
export const CsvPreview = z.strictObject({
  digest: Digest,
  counts: z.strictObject(csvCounts),
  added: z.array(CsvAddedRow).check(z.maxLength(mostCsvRowsListed)),
  changed: z.array(CsvChangedRow).check(z.maxLength(mostCsvRowsListed)),
  refused: z.array(CsvRefusedRow).check(z.maxLength(mostCsvRowsListed)),
})
export type CsvPreview = z.infer<typeof CsvPreview>

/** `watch`: an id of the caller's own, under which it asks meanwhile how far the import has come. */
const watch = z.optional(Id)
export const CsvWatch = z.strictObject({ watch })

/** `refused`: whether rows that cannot be read are left out, or stop the whole file. */
export const CsvApply = z.strictObject({ digest: Digest, refused: z.enum(['leave-out', 'stop']), watch })
export type CsvApply = z.infer<typeof CsvApply>

/** How far an import has come: rows done of all. */
export const CsvProgress = z.strictObject({
  step: z.enum(['comparing', 'writing']),
  done: z.int().check(z.gte(0)),
  of: z.int().check(z.gte(0)),
})
export type CsvProgress = z.infer<typeof CsvProgress>

/** What an import did. */
export const CsvApplied = z.strictObject(csvCounts)
export type CsvApplied = z.infer<typeof CsvApplied>
