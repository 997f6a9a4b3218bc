import { type CsvApplied, type CsvApply, csvPatienceSeconds } from '@bayledger/contract/csv'
import type { Prisma } from '@bayledger/db/generated/client'
import type { Deps } from '../../deps.ts'
import type { StaffActor } from '../actor.ts'
import { once } from '../once.ts'
import type { ImportPlan } from './plan-import.ts'
import { importCounts, refuseUnlessShown } from './present-import.ts'

type Tx = Prisma.TransactionClient

/** A file, and what the person was shown of it. */
export type GivenImport = { readonly bytes: Uint8Array; readonly apply: CsvApply }
export type ImportKey = { readonly key: string; readonly requestHash: string }

/**
 * Writes what the preview showed, once for a key and in one transaction. `plan` locks what it reads and plans anew;
 * `write` writes the plan. Throws `CSV_PREVIEW_STALE` or `CSV_ROWS_REFUSED`, and nothing is written.
 */
export const applyImport = <Planned extends { readonly plan: ImportPlan<unknown, unknown> }>(
  { prisma, shopId, clock }: Pick<Deps, 'prisma' | 'shopId' | 'clock'>,
  { staffId }: StaffActor,
  key: ImportKey,
  apply: CsvApply,
  plan: (tx: Tx) => Promise<Planned>,
  write: (tx: Tx, planned: Planned, by: { readonly staffId: string; readonly at: Date }) => Promise<void>,
): Promise<CsvApplied> => {
  const at = clock.now()
  const timeout = csvPatienceSeconds * 1_000
  return once(prisma, { shopId, actor: staffId, ...key, at, timeout }, async (tx) => {
    const planned = await plan(tx)
    refuseUnlessShown(planned.plan, apply)
    await write(tx, planned, { staffId, at })
    return importCounts(planned.plan)
  })
}
