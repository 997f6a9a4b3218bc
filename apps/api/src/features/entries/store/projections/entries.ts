import { canonicalText } from '@bayledger/ledger/digests'
import { projection } from './projection.ts'

/** The entries themselves, their payloads as canonical text. */
export const entryRows = projection({
  name: 'entry',
  columns: {
    id: 'uuid',
    seq: 'int',
    kind: 'text',
    version: 'int',
    payload: 'text',
    given: 'text',
    written_by: 'text',
    rests_on: 'uuid[]',
    device_id: 'uuid',
    written_at: 'timestamptz',
    received_at: 'timestamptz',
    previous_hash: 'text',
    hash: 'text',
  },
  rowsOf: ({ entries }) =>
    entries.map((entry) => ({
      id: entry.id,
      seq: entry.seq,
      kind: entry.kind,
      version: entry.version,
      payload: canonicalText(entry.payload),
      given: canonicalText(entry.given),
      written_by: canonicalText(entry.writtenBy),
      rests_on: entry.restsOn,
      device_id: entry.deviceId,
      written_at: entry.writtenAt,
      received_at: entry.receivedAt,
      previous_hash: entry.previousHash,
      hash: entry.hash,
    })),
  sql: (from) => `entry as (
    insert into entries (shop_id, order_id, id, seq, kind, version, payload, given, written_by, rests_on, device_id,
      written_at, received_at, previous_hash, hash)
    select shop_id, order_id, id, seq, kind, version, payload::json, given::json, written_by::json, rests_on, device_id,
      written_at, received_at, previous_hash, hash from ${from}
  )`,
  rebuild: 'never',
})
