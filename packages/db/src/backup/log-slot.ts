import { randomBytes } from 'node:crypto'
import type { Client } from 'pg'
import { type LogPosition, parsePosition } from './log-position.ts'

/**
 * The built-in PostgreSQL keeps its log for whoever copies it by a replication slot. The slot's name is also that of the
 * line of copies: a restored shop, or a log that had to be let go, begins another line.
 */
const PREFIX = 'bayledger_log_'

export type LogSlot = { readonly name: string; readonly line: string; readonly from: LogPosition }

/** The line that the log is copied into; `null`: it is not copied. */
export async function readLine(client: Client): Promise<string | null> {
  return (await readSlot(client))?.line ?? null
}

/**
 * The slot, made where there is none. Where nobody could copy for so long that PostgreSQL let the log go, a new line
 * begins.
 */
export async function keptSlot(client: Client): Promise<LogSlot> {
  const found = await readSlot(client)
  if (found !== null && !found.isLost) return found
  if (found !== null) await client.query('select pg_drop_replication_slot($1)', [found.name])
  await client.query('select pg_create_physical_replication_slot($1, true)', [
    `${PREFIX}${randomBytes(4).toString('hex')}`,
  ])
  return keptSlot(client)
}

/** Lets PostgreSQL recycle what lies before the position. */
export async function advanceSlot(client: Client, slot: LogSlot, to: LogPosition): Promise<void> {
  if (to <= slot.from) return
  const position = `${(to >> 32n).toString(16)}/${(to & 0xffff_ffffn).toString(16)}`
  await client.query('select pg_replication_slot_advance($1, $2)', [slot.name, position])
}

async function readSlot(client: Client): Promise<(LogSlot & { readonly isLost: boolean }) | null> {
  const { rows } = await client.query<{ name: string; from: string | null; status: string | null }>(
    `select slot_name as name, restart_lsn as "from", wal_status as status from pg_replication_slots
     where starts_with(slot_name, $1) order by 1 limit 1`,
    [PREFIX],
  )
  const slot = rows[0]
  if (slot === undefined) return null
  const isLost = slot.from === null || slot.status === 'lost'
  return {
    name: slot.name,
    line: slot.name.slice(PREFIX.length),
    from: parsePosition(slot.from ?? '0/0'),
    isLost,
  }
}
