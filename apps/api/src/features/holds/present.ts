import type { LegalHold } from '@bayledger/contract/holds'
import type { HoldRow } from './store.ts'

export const presentHold = (
  row: HoldRow,
  names: ReadonlyMap<string, { readonly name: string; readonly customerId: string }>,
): LegalHold => ({
  holdId: row.id,
  // The database holds no other subject.
  subject: row.subject === 'order' ? 'order' : 'customer',
  subjectId: row.subjectId,
  name: names.get(row.subjectId)?.name ?? '',
  customerId: names.get(row.subjectId)?.customerId ?? row.subjectId,
  reason: row.reason,
  placedBy: row.placer.name,
  placedAt: row.placedAt.toISOString(),
  liftedBy: row.lifter?.name ?? null,
  liftedAt: row.liftedAt?.toISOString() ?? null,
})
