import type { PersonContent } from '@bayledger/contract/people'
import { type Role, roles } from '@bayledger/ledger/role'
import { type RecordRow, severalIn, textIn, yesNo, yesNoRow } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { personFaults, roleWords, timesWords } from './person-words.ts'

const signInNameFault = (typed: string): string | undefined =>
  /^[a-z][a-z0-9.-]{1,30}$/.test(typed.trim()) ? undefined : personFaults.signInName

/** How often a secret was set stands in the history only: nobody edits it, and it never says what the secret is. */
const historyRows = (values: RowValues): readonly RecordRow[] =>
  'pinVersion' in values
    ? [
        { kind: 'text', key: 'pinVersion', label: 'PIN set' },
        { kind: 'text', key: 'passwordVersion', label: 'Password set' },
      ]
    : []

/** The rows of a person. */
export const personRows = (values: RowValues): readonly RecordRow[] => [
  { kind: 'text', key: 'name', label: 'Name', most: 80, hint: 'As it is printed on reports.' },
  {
    kind: 'text',
    key: 'signInName',
    label: 'Sign-in name',
    most: 31,
    hint: 'Small letters, digits, dots and hyphens.',
    fault: signInNameFault,
  },
  {
    kind: 'several',
    key: 'roles',
    label: 'Roles',
    noneWord: 'none',
    options: roles.map((value) => ({ value, label: value, detail: roleWords[value] })),
  },
  yesNoRow('active', 'Works here', { yes: 'works here', no: 'left: signed out everywhere at once' }),
  ...historyRows(values),
]

/** What a version of the history holds beside the content. */
type Counted = { readonly pinVersion?: number; readonly passwordVersion?: number }

export const personValues = (content: PersonContent & Counted): RowValues => ({
  name: content.name,
  signInName: content.signInName,
  roles: content.roles.join(','),
  active: yesNo(content.active),
  // The first version is that of nothing set.
  ...(content.pinVersion === undefined ? {} : { pinVersion: timesWords(content.pinVersion - 1) }),
  ...(content.passwordVersion === undefined
    ? {}
    : { passwordVersion: timesWords(content.passwordVersion - 1) }),
})

export const personContent = (values: RowValues): PersonContent => ({
  name: textIn(values, 'name'),
  signInName: textIn(values, 'signInName'),
  roles: severalIn(values, 'roles') as Role[],
  active: textIn(values, 'active') === 'yes',
})
