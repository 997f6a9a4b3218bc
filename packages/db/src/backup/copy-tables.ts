import type { Client } from 'pg'
import { to as copyTo } from 'pg-copy-streams'
import { withClient } from '../with-client.ts'
import type { ArchiveWriter } from './archive-writer.ts'

export type CopiedTables = { readonly at: Date; readonly counts: Readonly<Record<string, number>> }

const PIECE_BYTES = 4_000_000

/**
 * Copies every table of a database into an archive, all in one snapshot, while others go on writing. The rows of a table
 * are the text of PostgreSQL's COPY in pieces, `tables/<name>/000001.copy` and so on. Which migrations the tables were
 * made by is said elsewhere: their table is left out.
 *
 * @source PostgreSQL manual, COPY, "Text Format"; 13.2.2 Repeatable Read Isolation Level.
 */
export function copyTables(
  archive: ArchiveWriter,
  url: string,
  progress: (table: string) => void,
): Promise<CopiedTables> {
  return withClient(url, async (client) => {
    await client.query('begin isolation level repeatable read read only')
    const { rows } = await client.query<{ at: Date }>('select clock_timestamp() as at')
    const counts: Record<string, number> = {}
    for (const table of await listTables(client)) {
      progress(table)
      counts[table] = await copyTable(archive, client, table)
    }
    await client.query('commit')
    return { at: rows[0]?.at ?? new Date(), counts }
  })
}

/** The tables of a shop's database that hold rows of its own. */
export async function listTables(client: Client): Promise<string[]> {
  const { rows } = await client.query<{ name: string }>(
    `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'
       and relname <> '_prisma_migrations' order by 1`,
  )
  return rows.map(({ name }) => name)
}

/** The columns of a table that are written and not computed, in their order. */
export async function listColumns(client: Client, table: string): Promise<string[]> {
  const { rows } = await client.query<{ name: string }>(
    `select attname as name from pg_attribute where attrelid = ('public.' || quote_ident($1))::regclass
       and attnum > 0 and not attisdropped and attgenerated = '' order by attnum`,
    [table],
  )
  return rows.map(({ name }) => name)
}

async function copyTable(archive: ArchiveWriter, client: Client, table: string): Promise<number> {
  const columns = await listColumns(client, table)
  await archive.addBytes(`tables/${table}/columns.json`, Buffer.from(JSON.stringify(columns)))
  const names = columns.map((name) => client.escapeIdentifier(name)).join(', ')
  const stream = client.query(copyTo(`copy public.${client.escapeIdentifier(table)} (${names}) to stdout`))
  let number = 0
  for await (const piece of inPieces(stream)) {
    number += 1
    await archive.addBytes(`tables/${table}/${String(number).padStart(6, '0')}.copy`, piece)
  }
  return stream.rowCount
}

/** Each piece holds whole rows: a line feed ends a row and is nowhere else. */
async function* inPieces(source: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let waiting: Uint8Array[] = []
  let bytes = 0
  for await (const chunk of source) {
    waiting.push(chunk)
    bytes += chunk.length
    if (bytes < PIECE_BYTES) continue
    const joined = Buffer.concat(waiting)
    const rowsEnd = joined.lastIndexOf(0x0a) + 1
    if (rowsEnd > 0) yield joined.subarray(0, rowsEnd)
    waiting = [joined.subarray(rowsEnd)]
    bytes = joined.length - rowsEnd
  }
  if (bytes > 0) yield Buffer.concat(waiting)
}
