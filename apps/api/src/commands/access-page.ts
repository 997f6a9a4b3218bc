import { contract } from '@bayledger/contract/contract'
import type { Access, Endpoint } from '@bayledger/contract/endpoint'
import { definitionOf, kindNames } from '@bayledger/ledger/registry'
import { type Role, roles } from '@bayledger/ledger/role'

/** docs/access.md: who may write each kind of entry, and who may call each route. Both are what the server enforces. */
export const accessPage = (): string =>
  [
    '# Who may do what',
    '',
    'Made from the registry of entry kinds and the contract by `npm run docs:access`; a test keeps it current. A person may',
    'hold several roles and may do what any of them may. `npm run staff:roles -- <sign-in name> <roles…>` changes them.',
    '',
    '## Entries',
    '',
    'Where: at the *desk* only, or *anywhere*, a tablet included. *Second*: the roles of the second person whom an entry of',
    'this kind names, and who agrees with their own PIN. Only a manager or the owner may record a refund',
    '(`payment.noted`). Only the server writes a job plan.',
    '',
    table(
      ['Kind', ...roles, 'Customer', 'Where', 'Second'],
      kindNames.map((kind) => {
        const { roles: allowed, agreedBy, writtenBy, writtenWhere } = definitionOf(kind)
        return [
          `\`${kind}\``,
          ...roles.map((role) => tick(allowed.includes(role))),
          tick(writtenBy.includes('customer')),
          writtenWhere === 'server' ? 'desk' : 'anywhere',
          agreedBy.join(', '),
        ]
      }),
    ),
    '',
    '## Routes',
    '',
    'A reply may hold less for some callers: a tablet and a technician get no prices and no telephone number. *With a recent proof*: whoever',
    'calls has signed in, or proven again that it is them, within the last ten minutes. *Before the sign-in is finished*: also for whoever still has to choose their own password, or to turn a second',
    'step on, and may do nothing else.',
    '',
    table(
      ['Route', 'What it does', 'Who'],
      contract.map(({ method, path, summary, access }: Endpoint) => [
        `\`${method} ${path}\``,
        summary,
        whoWords(access),
      ]),
    ),
    '',
  ].join('\n')

const tick = (is: boolean): string => (is ? 'yes' : '')

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n')

const whoWords = (access: Access): string => {
  const held: readonly Role[] = ('roles' in access ? access.roles : undefined) ?? []
  const whom = held.length === 0 ? who[access.who] : `${who[access.who]}: ${held.join(', ')}`
  const early = 'awaiting' in access ? '; before the sign-in is finished' : ''
  return 'proof' in access ? `${whom}; with a recent proof${early}` : `${whom}${early}`
}

const who: Readonly<Record<Access['who'], string>> = {
  desk: 'a person at the desk',
  staff: 'a person at the desk or on a tablet',
  device: 'a tablet, with or without a person, or the desk',
  'customer-link': "whoever has the order's link",
  public: 'anyone',
}
