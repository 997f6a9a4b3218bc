import type { CsvFault } from '@bayledger/contract/csv'
import { PersonContent } from '@bayledger/contract/people'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import type { ImportPlan } from '../../../core/csv/plan-import.ts'
import { plannedRows } from '../../../core/csv/present-import.ts'
import { recordCsv } from '../../../core/csv/record-csv.ts'
import { refusedCells } from '../../../core/csv/refused-cells.ts'
import type { Kept } from '../../../core/record-versions.ts'
import { registerRowWords } from '../../../words/csv-words.ts'
import * as store from '../store.ts'
import { columnOf, type PersonRow, personColumns, personOfRow, rowOfPerson } from './person-columns.ts'

const table: CsvTable<PersonRow> = {
  columns: personColumns,
  key: ['sign_in_name'],
  check: (row) => refusedCells(PersonContent, personOfRow(row), columnOf, row),
}

const isOwner = ({ roles, works_here }: PersonRow): boolean => works_here && roles.includes('owner')

/** Refuses whoever a file would take an owner from: of those who are owners now, one has to stay. */
const keepingOwners: CsvTable<PersonRow> = {
  ...table,
  check: (row, before) => [...(table.check?.(row, before) ?? []), ...lastOwnerFaults(row, before)],
}

const lastOwnerFaults = (row: PersonRow, before: PersonRow | null): readonly CsvFault[] =>
  before !== null && isOwner(before) && !isOwner(row)
    ? [
        {
          column: row.works_here ? 'roles' : 'works_here',
          found: row.works_here ? row.roles.join('; ') : 'no',
          ...registerRowWords.lastOwner,
        },
      ]
    : []

const ownersAfter = (
  rows: readonly { readonly row: PersonRow; readonly stored: Kept<store.KeptPerson> }[],
  plan: ImportPlan<PersonRow, Kept<store.KeptPerson>>,
): number => {
  const after = new Map(rows.map(({ row, stored }) => [stored.id, row]))
  for (const { row, stored } of plannedRows(plan, 'changed')) after.set(stored.id, row)
  return [...after.values(), ...plannedRows(plan, 'added').map(({ row }) => row)].filter(isOwner).length
}

/**
 * Everyone who works here or did, as a CSV file and back. Whoever a file adds cannot sign in until a PIN or a password is
 * set; whoever it says has left is signed out everywhere at once.
 */
export const peopleCsv = recordCsv<PersonRow, store.KeptPerson>({
  store: store.personRecords,
  list: async (from, { shopId }) => {
    const rows = (await store.listPeople(from, shopId)).map(({ id, version, content }) => ({
      row: rowOfPerson(content),
      stored: { id, version, content },
    }))
    return {
      table,
      rows,
      contentOf: (row, before) => ({
        ...personOfRow(row),
        pinVersion: before?.pinVersion ?? 1,
        passwordVersion: before?.passwordVersion ?? 1,
      }),
      strictly: (plan) => (ownersAfter(rows, plan) === 0 ? keepingOwners : null),
    }
  },
  changed: async (tx, { shopId, clock }, { id, content }) => {
    if (!content.active) await store.endSessions(tx, shopId, { staffId: id, except: null, at: clock.now() })
  },
})
