import type { SentEntry } from '@bayledger/contract/entries'
import type { Entry } from '@bayledger/ledger/entry'

/** An entry as a reply carries it. */
export const presentEntry = (entry: Entry): SentEntry => ({
  id: entry.id,
  shopId: entry.shopId,
  orderId: entry.orderId,
  seq: entry.seq,
  kind: entry.kind,
  version: entry.version,
  payload: entry.payload,
  given: entry.given,
  restsOn: [...entry.restsOn],
  writtenBy: entry.writtenBy,
  deviceId: entry.deviceId,
  writtenAt: entry.writtenAt,
  receivedAt: entry.receivedAt,
  previousHash: entry.previousHash,
  hash: entry.hash,
})
