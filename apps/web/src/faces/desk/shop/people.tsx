import { type Person, type PersonContent, people, peopleCsv } from '@bayledger/contract/people'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { sessionQuery, staffQuery } from '../../../features/people/queries.ts'
import { csvSource } from '../../../lib/csv-source.ts'
import { recordSource } from '../../../lib/record-source.ts'
import { CsvExchange } from '../../../ui/record/csv-exchange.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'
import { PasskeysPart } from './passkeys-part.tsx'
import { personContent, personRows, personValues } from './person-rows.ts'
import { SecondStepPart } from './second-step-part.tsx'
import { SessionsPart } from './sessions-part.tsx'
import { SetSecret } from './set-secret.tsx'
import type { ShopPageProps } from './shop-page.ts'

const csv = csvSource(peopleCsv)

const signInWays = ({ hasPin, hasPassword }: Person['facts']): string =>
  hasPin && hasPassword
    ? 'PIN and password'
    : hasPin
      ? 'PIN, no password'
      : hasPassword
        ? 'password, no PIN'
        : 'cannot sign in yet'

const kind: RecordKind<PersonContent, Person['facts']> = {
  name: 'people',
  words: { one: 'person', all: 'people', add: 'Add a person' },
  source: recordSource(people),
  rows: personRows,
  blank: { active: 'yes' },
  toValues: personValues,
  toContent: personContent,
  title: ({ name }) => name,
  line: ({ content: { roles, active, signInName }, facts }) =>
    [active ? roles.join(', ') : 'left', signInName, signInWays(facts)].join(' · '),
  touches: [[...staffQuery.queryKey], ['checklist'], [...sessionQuery.queryKey]],
  mayAdd: true,
  afterAdding: ({ facts: { hasPin, hasPassword } }) =>
    hasPin || hasPassword
      ? null
      : 'They cannot sign in yet: below, set a PIN for tablets, and a password for the desk.',
}

/** Everyone who works here or did: roles, PIN, password, and leaving. */
export function PeoplePage({ open, onOpen }: ShopPageProps) {
  const client = useQueryClient()
  return (
    <RecordPage
      kind={kind}
      open={open}
      onOpen={onOpen}
      clock={useShopClock()}
      csv={<CsvExchange source={csv} name="people" onApplied={() => client.invalidateQueries()} />}
      beside={(person) => <Secrets person={person} />}
    />
  )
}

function Secrets({ person }: { person: Person }) {
  const session = useQuery(sessionQuery)
  const client = useQueryClient()
  if (session.data === undefined || !person.content.active) return null
  const isOwn = session.data.staff.staffId === person.id
  const readAgain = () =>
    Promise.all(
      [['people'], ['checklist'], ['sessions']].map((queryKey) => client.invalidateQueries({ queryKey })),
    )
  return (
    <>
      <Section title="PIN and password">
        <p>
          {isOwn
            ? 'Both are yours alone. You prove with the present one that it is you.'
            : 'A password that you set is taken for seven days, and they choose their own at the first sign-in. Let them type the PIN themselves: whoever knows somebody’s PIN can sign in their name, so the history says who set it.'}
        </p>
        {(['pin', 'password'] as const).map((secret) => (
          <SetSecret key={secret} person={person} secret={secret} isOwn={isOwn} onSet={readAgain} />
        ))}
      </Section>
      <SecondStepPart staffId={person.id} isOwn={isOwn} />
      <PasskeysPart staffId={person.id} isOwn={isOwn} />
      <SessionsPart staffId={person.id} isOwn={isOwn} />
    </>
  )
}
