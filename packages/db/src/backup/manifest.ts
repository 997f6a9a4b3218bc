import * as z from 'zod/mini'
import { BackupProblem } from './backup-problem.ts'

/** The first entry of every backup: what it is, before anything is unpacked. */
export const AboutBackup = z.strictObject({
  format: z.literal(1),
  /** `cluster`: the files of a built-in PostgreSQL. `tables`: the rows of every table, for any PostgreSQL. */
  kind: z.enum(['cluster', 'tables']),
  madeAt: z.iso.datetime(),
  /** The major version of PostgreSQL that the data were in. */
  postgres: z.string(),
  migrations: z.array(z.strictObject({ name: z.string(), checksum: z.string() })),
  /** The zone by whose clocks the shop's days are counted. */
  timeZone: z.string(),
})
export type AboutBackup = z.infer<typeof AboutBackup>

/** The last entry: what the backup holds, file by file, and how many rows of each table that counts. */
export const Manifest = z.strictObject({
  files: z.record(z.string(), z.strictObject({ bytes: z.int(), sha256: z.string() })),
  counts: z.record(z.string(), z.int()),
  /** Where in PostgreSQL's log the counts hold; `null` where rows were copied in one snapshot. */
  restorePoint: z.nullable(z.string()),
})
export type Manifest = z.infer<typeof Manifest>

export const aboutPath = 'about.json'
export const manifestPath = 'manifest.json'

/** Reads one of the two back. */
export function parseEntry<T extends z.core.$ZodType>(schema: T, path: string, text: string): z.output<T> {
  let given: unknown
  try {
    given = JSON.parse(text)
  } catch {
    given = undefined
  }
  const parsed = z.safeParse(schema, given)
  if (parsed.success) return parsed.data
  throw new BackupProblem(
    `${path} in this backup cannot be read. It was made by a newer Bayledger, or by another program.`,
  )
}
