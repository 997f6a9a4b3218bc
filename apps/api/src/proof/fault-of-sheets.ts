import type { Entry } from '@bayledger/ledger/entry'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import { SheetFigure } from '@bayledger/reckoning/sheet'
import type { Pool } from 'pg'
import { listFigureProofs } from './read-proof.ts'

/**
 * The first entry with a sheet of which a figure is said to be verified by somebody who never proved it by PIN; `null`:
 * none. A first version only named who verified a figure; those are passed over.
 */
export const faultOfSheets = async (
  pool: Pool,
  shopId: string,
  entries: readonly Entry[],
): Promise<{ readonly seq: number; readonly what: string } | null> => {
  const verified = entries.flatMap((entry) =>
    entry.kind === 'sheet.chosen' && entry.version > 1
      ? SheetFigure.options.flatMap((figure) => {
          const { sheet } = entry.payload
          const staffId = sheet.sources[figure]?.verifiedBy ?? null
          return staffId === null
            ? []
            : [{ seq: entry.seq, staffId, digest: sheetFigureDigest(sheet, figure) ?? '' }]
        })
      : [],
  )
  const proofs = await listFigureProofs(
    pool,
    shopId,
    verified.map(({ digest }) => digest),
  )
  const fault = verified.find(
    (one) => !proofs.some(({ staffId, digest }) => staffId === one.staffId && digest === one.digest),
  )
  return fault
    ? { seq: fault.seq, what: 'whoever verified a figure of its sheet never proved it by PIN' }
    : null
}
