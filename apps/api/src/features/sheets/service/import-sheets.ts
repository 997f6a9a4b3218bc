import { randomUUID } from 'node:crypto'
import type { CsvApplied, CsvPreview } from '@bayledger/contract/csv'
import type { SheetContent } from '@bayledger/contract/sheets'
import type { Prisma } from '@bayledger/db/generated/client'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { StaffActor } from '../../../core/actor.ts'
import { applyImport, type GivenImport, type ImportKey } from '../../../core/csv/apply-import.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { type ImportPlan, planImport } from '../../../core/csv/plan-import.ts'
import { plannedRows, presentPreview } from '../../../core/csv/present-import.ts'
import { writeCsv } from '../../../core/csv/write-csv.ts'
import type { Deps } from '../../../deps.ts'
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

/** Every sheet in its newest version, as a CSV file. */
export const exportSheets = async (deps: Deps): Promise<Uint8Array> =>
  writeCsv(sheetTable, (await newestSheets(deps.prisma, deps.shopId)).map(rowOfSheet))

const planFor = async (
  from: Prisma.TransactionClient,
  shopId: string,
  bytes: Uint8Array,
): Promise<ImportPlan<SheetRow, SpecificationSheet>> =>
  planImport(
    sheetTable,
    bytes,
    (await newestSheets(from, shopId)).map((sheet) => ({ row: rowOfSheet(sheet), stored: sheet })),
  )

export const previewSheets = async (deps: Deps, bytes: Uint8Array): Promise<CsvPreview> =>
  presentPreview(await planFor(deps.prisma, deps.shopId, bytes))

/**
 * Writes what the preview showed, in one transaction: a version of each sheet that changes, and new sheets. Figures that
 * change were entered by whoever imports, and are verified by nobody.
 */
export const importSheets = (
  deps: Deps,
  actor: StaffActor,
  key: ImportKey,
  { bytes, apply }: GivenImport,
): Promise<CsvApplied> =>
  applyImport(
    deps,
    actor,
    key,
    apply,
    async (tx) => {
      await store.lockSheets(tx, deps.shopId)
      return { plan: await planFor(tx, deps.shopId, bytes) }
    },
    async (tx, { plan }, importer) => {
      const by = { shopId: deps.shopId, ...importer }
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
      const versions = []
      for (const { sheetId, version, row, before } of [...added, ...changed])
        versions.push({ sheetId, version, body: await bodyOf(tx, by, contentOf(row), before) })
      await store.insertSheets(
        tx,
        deps.shopId,
        added.map(({ sheetId }) => sheetId),
      )
      await store.insertVersions(tx, versions, by)
      const born = added.map(({ sheetId, row }) => ({ sheetId, name: row.vehicle }))
      await store.linkVehicles(tx, deps.shopId, born, by.at)
    },
  )

const contentOf = (row: SheetRow): SheetContent => {
  const read = contentOfRow(row)
  if ('faults' in read) throw new RangeError('a row that the plan takes can be read')
  return read.content
}
