import type { CsvApplied, CsvFault, CsvPreview } from '@bayledger/contract/csv'
import type { InstrumentContent } from '@bayledger/contract/instruments'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../../core/actor.ts'
import { applyImport, type GivenImport, type ImportKey } from '../../../core/csv/apply-import.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { type ImportPlan, planImport } from '../../../core/csv/plan-import.ts'
import { plannedRows, presentPreview } from '../../../core/csv/present-import.ts'
import { writeCsv } from '../../../core/csv/write-csv.ts'
import { keepVersion, putRecordIn } from '../../../core/record-versions.ts'
import type { Deps } from '../../../deps.ts'
import { cellWords } from '../../../words/csv-words.ts'
import { registerCellWords } from '../../../words/doubt-words.ts'
import { doubtsOf } from '../policy.ts'
import * as store from '../store.ts'
import {
  columnOf,
  type InstrumentRow,
  instrumentColumns,
  instrumentOfRow,
  rowOfInstrument,
} from './instrument-columns.ts'

type Known = {
  /** The id of each place by its name. */
  readonly places: ReadonlyMap<string, string>
  /** YYYY-MM-DD, UTC. */
  readonly today: string
}

const tableFor = (known: Known): CsvTable<InstrumentRow> => ({
  columns: instrumentColumns,
  key: ['code'],
  check: (row, before) => faultsOf(row, before, known),
})

/** What is wrong with a row. What is likely a slip is refused as well, unless it stands in the register already. */
const faultsOf = (
  row: InstrumentRow,
  before: InstrumentRow | null,
  { places, today }: Known,
): readonly CsvFault[] => {
  const locationId = places.get(row.place)
  if (locationId === undefined)
    return [{ column: 'place', found: row.place, ...cellWords.noPlace([...places.keys()]) }]
  if (before !== null && before.kind !== row.kind)
    return [{ column: 'kind', found: row.kind, ...registerCellWords.sameKind }]
  const read = instrumentOfRow(row, locationId)
  if (!read.success)
    return read.error.issues.map((issue) => {
      const column = columnOf[String(issue.path[0])] ?? 'code'
      return { column, found: String(row[column] ?? ''), ...registerCellWords.cannotBe }
    })
  return doubtsOf(read.data, today).flatMap(({ field, found, allowed }) => {
    const column = columnOf[field] ?? 'code'
    return before !== null && before[column] === row[column]
      ? []
      : [{ column, found, ...registerCellWords.doubtful(allowed) }]
  })
}

const planFor = async (
  from: store.Reader,
  { shopId, clock }: Pick<Deps, 'shopId' | 'clock'>,
  bytes: Uint8Array,
): Promise<{ plan: ImportPlan<InstrumentRow, store.KeptInstrument>; known: Known }> => {
  const [places, stored] = await Promise.all([
    store.listPlaceNames(from, shopId),
    store.listInstruments(from, shopId),
  ])
  const known = { places, today: clock.now().toISOString().slice(0, 10) }
  return { plan: await planImport(tableFor(known), bytes, rowsOf(stored, places)), known }
}

const rowsOf = (stored: readonly store.KeptInstrument[], places: Known['places']) => {
  const names = new Map([...places].map(([name, id]) => [id, name]))
  return stored.map((kept) => ({
    row: rowOfInstrument(kept.content, names.get(kept.content.locationId) ?? ''),
    stored: kept,
  }))
}

/** Every wrench and gauge, as a CSV file. */
export const exportInstruments = async ({ prisma, shopId, clock }: Deps): Promise<Uint8Array> => {
  const places = await store.listPlaceNames(prisma, shopId)
  const stored = await store.listInstruments(prisma, shopId)
  const known = { places, today: clock.now().toISOString().slice(0, 10) }
  return writeCsv(
    tableFor(known),
    rowsOf(stored, places).map(({ row }) => row),
  )
}

export const previewInstruments = async (deps: Deps, bytes: Uint8Array): Promise<CsvPreview> =>
  presentPreview((await planFor(deps.prisma, deps, bytes)).plan)

/** Writes what the preview showed, in one transaction, each instrument with a version of its history. */
export const importInstruments = (
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
    (tx) => planFor(tx, deps, bytes),
    async (tx, { plan, known }, { at }) => {
      const contentOf = (row: InstrumentRow): InstrumentContent => {
        const read = instrumentOfRow(row, known.places.get(row.place) ?? '')
        if (!read.success) throw new Error('a row that was planned cannot be read')
        return read.data
      }
      for (const { row } of plannedRows(plan, 'added')) {
        const kept = { id: newId(), version: 1, content: contentOf(row) }
        await store.instrumentRecords.insert(tx, deps.shopId, kept, at)
        await keepVersion(tx, deps.shopId, 'instrument', kept, { by: actor, at })
      }
      for (const { row, stored } of plannedRows(plan, 'changed'))
        await putRecordIn(tx, deps, actor, store.instrumentRecords, { ...stored, content: contentOf(row) })
    },
  )
