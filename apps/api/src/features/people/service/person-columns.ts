import type { PersonContent } from '@bayledger/contract/people'
import { roles } from '@bayledger/ledger/role'
import { choicesCell, textCell, yesNoCell } from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'

/** What a file of people holds. Their PIN and password are in none. */
export const personColumns = {
  sign_in_name: textCell(31),
  name: textCell(80),
  roles: choicesCell(roles),
  works_here: yesNoCell(),
}
export type PersonRow = RowOf<typeof personColumns>

/** The column in which a field of a person is. */
export const columnOf: Readonly<Record<string, keyof PersonRow>> = {
  signInName: 'sign_in_name',
  name: 'name',
  roles: 'roles',
  active: 'works_here',
}

export const rowOfPerson = ({ name, signInName, roles: held, active }: PersonContent): PersonRow => ({
  sign_in_name: signInName,
  name,
  roles: held,
  works_here: active,
})

export const personOfRow = ({ sign_in_name, name, roles: held, works_here }: PersonRow): PersonContent => ({
  name,
  signInName: sign_in_name,
  roles: [...held],
  active: works_here,
})
