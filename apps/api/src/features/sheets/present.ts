import type { SheetOrder, StoredSheet } from '@bayledger/contract/sheets'
import { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { SheetOrderRow, SheetRow } from './store.ts'

/** The stored body with the row's own id and version, overriding those in the body. */
export const presentSheet = (row: SheetRow): SpecificationSheet =>
  SpecificationSheet.parse({ ...(row.body as object), sheetId: row.sheetId, version: row.version })

export const presentStoredSheet = (row: SheetRow): StoredSheet => ({
  sheet: presentSheet(row),
  createdAt: row.createdAt.toISOString(),
  createdBy: (row.createdBy as { staffId?: string }).staffId ?? null,
})

export const presentSheetOrder = ({ openedAt, ...order }: SheetOrderRow): SheetOrder => ({
  ...order,
  openedAt: openedAt.toISOString(),
})
