import { ErasedCounts, type Erasure, IdentityCheck, KeptReason } from '@bayledger/contract/erasures'
import type { ErasureRow } from './store.ts'

export const presentErasure = (row: ErasureRow, names: ReadonlyMap<string, string>): Erasure => {
  const { staffId } = row.erasedBy as { staffId?: string }
  return {
    erasureId: row.id,
    customerId: row.customerId ?? '',
    at: row.erasedAt.toISOString(),
    by: staffId === undefined ? null : (names.get(staffId) ?? null),
    reason: KeptReason.parse(row.reason),
    identity: row.identity === null ? null : IdentityCheck.parse(row.identity),
    counts: ErasedCounts.parse(row.counts),
  }
}
