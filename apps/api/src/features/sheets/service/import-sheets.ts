import { randomUUID } from 'node:crypto'
import type { SheetContent } from '@bayledger/contract/sheets'
import type { Prisma } from '@bayledger/db/generated/client'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { inPortions, listCsv } from '../../../core/csv/list-csv.ts'
import { plannedRows } from '../../../core/csv/present-import.ts'
import { presentSheet } from '../present.ts'
import { bodyOf } from '../service.ts'
import * as store from '../store.ts'
import { contentOfRow, doubtsOfRow } from './content-of-row.ts'
import { type SheetRow, sheetColumns } from './sheet-columns.ts'
import { rowOfSheet } from './sheet-row.ts'

const sheetTable: CsvTable<SheetRow> = {
  columns: sheetColumns,
  key: ['vehicle'],
  notKept: ['unlikely_read_twice'],
  check: (row) => {
    const read = contentOfRow(row)
    return 'faults' in read ? read.faults : doubtsOfRow(row)
  },
}

const newestSheets = async (from: Prisma.TransactionClient, shopId: string): Promise<SpecificationSheet[]> =>
  (await store.listNewestSheets(from, shopId))
    .map(presentSheet)
    .toSorted((one, other) => one.name.localeCompare(other.name))

/**
 * Every sheet in its newest version, as a CSV file and back: a version of each sheet that changes, and new sheets. Figures
 * that change were entered by whoever imports, and are verified by nobody.
 */
export const sheetsCsv = listCsv({
  list: async (from, { shopId }) => ({
    table: sheetTable,
    rows: (await newestSheets(from, shopId)).map((sheet) => ({ row: rowOfSheet(sheet), stored: sheet })),
  }),
  lock: store.lockSheets,
  put: async (tx, { shopId }, { plan, actor: { staffId }, at, wrote }) => {
    const by = { shopId, staffId, at }
    const added = plannedRows(plan, 'added').map(({ row }) => ({
      sheetId: randomUUID(),
      version: 1,
      row,
      before: null,
    }))
    const changed = plannedRows(plan, 'changed').map(({ row, stored }) => ({
      sheetId: stored.sheetId,
      version: stored.version + 1,
      row,
      before: stored,
    }))
    await store.insertSheets(
      tx,
      shopId,
      added.map(({ sheetId }) => sheetId),
    )
    await inPortions([...added, ...changed], { wrote }, async (some) => {
      const versions = []
      for (const { sheetId, version, row, before } of some)
        versions.push({ sheetId, version, body: await bodyOf(tx, by, contentOf(row), before) })
      await store.insertVersions(tx, versions, by)
    })
    const born = added.map(({ sheetId, row }) => ({ sheetId, name: row.vehicle }))
    await store.linkVehicles(tx, shopId, born, at)
  },
})

const contentOf = (row: SheetRow): SheetContent => {
  const read = contentOfRow(row)
  if ('faults' in read) throw new RangeError('a row that the plan takes can be read')
  return read.content
}
