import type { RefusedEntry } from '@bayledger/contract/entries'
import { definitionOf, isKind } from '@bayledger/ledger/registry'
import { english } from '@bayledger/wording/en/english'
import { refusalWords } from '@bayledger/wording/refusals'
import type { RefusedRow } from './store/refused-entries.ts'

export const presentRefused = (row: RefusedRow): RefusedEntry => ({
  id: row.id,
  orderId: row.orderId,
  orderNumber: row.orderNumber,
  kind: row.kind,
  code: row.code,
  values: row.values,
  words: refusalWords(english.refusals, row),
  receivedAt: row.receivedAt.toISOString(),
  writtenBy: row.writtenBy,
  body: row.body,
  bodyBytes: row.bodyBytes,
})

/** A refused entry for someone who gets no money: whatever was sent as a kind that names money is left out. */
export const presentWithoutMoney = (row: RefusedRow): RefusedEntry => {
  const mayHoldMoney = !isKind(row.kind) || definitionOf(row.kind).sides.includes('money')
  return { ...presentRefused(row), ...(mayHoldMoney ? { body: null } : {}) }
}
