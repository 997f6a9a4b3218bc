import type { RefusedEntry, SentEntry } from '@bayledger/contract/entries'
import type { Entry } from '@bayledger/ledger/entry'
import { definitionOf, isKind } from '@bayledger/ledger/registry'
import type { RefusedRow } from './store/refused-entries.ts'

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

export const presentRefused = (row: RefusedRow): RefusedEntry => ({
  id: row.id,
  orderId: row.orderId,
  orderNumber: row.orderNumber,
  kind: row.kind,
  code: row.code,
  words: row.words,
  receivedAt: row.receivedAt.toISOString(),
  writtenBy: row.writtenBy,
  body: row.body,
})

/** A refused entry for someone who gets no money: whatever was sent as a kind that names money is left out. */
export const presentWithoutMoney = (row: RefusedRow): RefusedEntry => {
  const mayHoldMoney = !isKind(row.kind) || definitionOf(row.kind).sides.includes('money')
  return { ...presentRefused(row), ...(mayHoldMoney ? { body: null } : {}) }
}
