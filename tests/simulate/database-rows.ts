import type { Entry } from '@bayledger/ledger/entry'

/** A head as an append asks for it: the columns that its guards read. */
export type HeadRowAsked = {
  readonly shop_id: string
  readonly order_id: string
  readonly after: number
  readonly after_hash: string
  readonly seq: number
  readonly hash: string
  readonly number: string | null
  readonly next: number | null
  readonly entry_ids: readonly string[]
  readonly session_ids: readonly string[]
  readonly device_ids: readonly string[]
  readonly facts_version: number
}

/** An entry as an append writes it: JSON columns as text. */
export type NewEntryRow = {
  readonly shop_id: string
  readonly order_id: string
  readonly id: string
  readonly seq: number
  readonly kind: string
  readonly version: number
  readonly payload: string
  readonly given: string
  readonly written_by: string
  readonly rests_on: readonly string[]
  readonly device_id: string | null
  readonly written_at: string
  readonly received_at: string
  readonly previous_hash: string
  readonly hash: string
}

/** An entry as it is read back: `row` as the driver gives it, `entry` as the ledger has it. */
export type StoredRow = { readonly row: { readonly id: string }; readonly entry: Entry }

/** JSON is parsed from what was written, as the driver does: what did not survive that is not there. */
export const storedRow = (written: NewEntryRow): StoredRow => {
  const row = {
    ...written,
    payload: JSON.parse(written.payload) as unknown,
    given: JSON.parse(written.given) as unknown,
    written_by: JSON.parse(written.written_by) as unknown,
    written_at: new Date(written.written_at),
    received_at: new Date(written.received_at),
  }
  const entry = {
    id: row.id,
    shopId: row.shop_id,
    orderId: row.order_id,
    seq: row.seq,
    kind: row.kind,
    version: row.version,
    payload: row.payload,
    given: row.given,
    restsOn: row.rests_on,
    writtenBy: row.written_by,
    deviceId: row.device_id,
    writtenAt: written.written_at,
    receivedAt: written.received_at,
    previousHash: row.previous_hash,
    hash: row.hash,
  } as Entry
  return { row, entry }
}

/** The same of an entry that was written before. */
export const storedEntry = (entry: Entry): StoredRow =>
  storedRow({
    shop_id: entry.shopId,
    order_id: entry.orderId,
    id: entry.id,
    seq: entry.seq,
    kind: entry.kind,
    version: entry.version,
    payload: JSON.stringify(entry.payload),
    given: JSON.stringify(entry.given),
    written_by: JSON.stringify(entry.writtenBy),
    rests_on: entry.restsOn,
    device_id: entry.deviceId,
    written_at: entry.writtenAt,
    received_at: entry.receivedAt,
    previous_hash: entry.previousHash,
    hash: entry.hash,
  })
