import { listErasures } from '@bayledger/contract/erasures'
import { listHolds } from '@bayledger/contract/holds'
import {
  getRetention,
  listRetentionDue,
  type PastCounts,
  putRetention,
  type RetentionContent,
} from '@bayledger/contract/retention'
import { useQuery } from '@tanstack/react-query'
import { Link } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { customerPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'
import { retentionContent, retentionRows, retentionValues } from './retention-rows.ts'
import type { ShopPageProps } from './shop-page.ts'

/** The times are one record that every shop has: none is added, and it is always open. */
const kind: RecordKind<RetentionContent> = {
  name: 'retention',
  words: { one: 'time', all: 'times', add: '' },
  source: {
    list: async (signal) => [(await call(getRetention, { signal })).record],
    read: (_id, signal) => call(getRetention, { signal }),
    create: () => Promise.reject(new Error('times are never added')),
    put: (_id, version, content) => call(putRetention, { version, body: { content } }),
  },
  rows: () => retentionRows,
  blank: {},
  toValues: retentionValues,
  toContent: retentionContent,
  title: () => 'For how long the shop keeps what is of people',
  line: () => '',
  touches: [['privacy']],
  isOne: true,
}

const things: Readonly<Record<keyof PastCounts, string>> = {
  drafts: 'write-ups that were begun',
  messages: 'addresses of messages',
  openings: 'openings of links',
  browsers: 'known browsers',
  sessions: 'places of sessions',
  refused: 'refused entries',
}

/** For how long people's data are kept, what goes next, what a hold keeps, and who erased what. */
export function PrivacyPage({ onOpen }: ShopPageProps) {
  const clock = useShopClock()
  return (
    <>
      <RecordPage kind={kind} open="retention" onOpen={onOpen} clock={clock} />
      <Due />
      <Holds />
      <Erasures />
    </>
  )
}

function Due() {
  const clock = useShopClock()
  const due = useQuery({
    queryKey: ['privacy', 'due'],
    queryFn: ({ signal }) => call(listRetentionDue, { signal }),
    staleTime: 0,
  })
  const now = new Date().toISOString()
  const counts = Object.entries(due.data?.counts ?? {}).filter(([, count]) => count > 0)
  return (
    <Section title="What goes next">
      {due.isError ? <ProblemNotice problem={problemText(due.error)} /> : null}
      <ul>
        {counts.map(([what, count]) => (
          <li key={what}>{`${count} ${things[what as keyof PastCounts]}, within the hour`}</li>
        ))}
        {due.data?.customers.map(({ customerId, name, lastAt, held }) => (
          <li key={customerId}>
            <Link to={customerPath(customerId)}>{name}</Link>
            {`, last here ${clockTimeOrDay(lastAt, now, clock)}${held ? ': a legal hold keeps them' : ''}`}
          </li>
        ))}
      </ul>
      {due.data !== undefined && counts.length === 0 && due.data.customers.length === 0 ? (
        <p>Nothing is due within 30 days.</p>
      ) : null}
    </Section>
  )
}

function Holds() {
  const clock = useShopClock()
  const holds = useQuery({
    queryKey: ['holds'],
    queryFn: ({ signal }) => call(listHolds, { signal }),
    staleTime: 0,
  })
  const now = new Date().toISOString()
  const holding = holds.data?.holds.filter(({ liftedAt }) => liftedAt === null) ?? []
  return (
    <Section title="Legal holds">
      {holds.isError ? <ProblemNotice problem={problemText(holds.error)} /> : null}
      {holds.data !== undefined && holding.length === 0 ? <p>There is none.</p> : null}
      <ul>
        {holding.map(({ holdId, name, customerId, reason, placedBy, placedAt }) => (
          <li key={holdId}>
            <Link to={customerPath(customerId)}>{name}</Link>
            {`: ${reason} (${placedBy}, ${clockTimeOrDay(placedAt, now, clock)})`}
          </li>
        ))}
      </ul>
    </Section>
  )
}

const reasons = {
  asked: 'the person asked for it',
  'not-needed': 'the shop needed the data no more',
  'time-over': 'the time was over',
  'came-late': 'what came, or was due, after an erasure',
} as const

function Erasures() {
  const clock = useShopClock()
  const erasures = useQuery({
    queryKey: ['privacy', 'erasures'],
    queryFn: ({ signal }) => call(listErasures, { signal }),
    staleTime: 0,
  })
  const now = new Date().toISOString()
  return (
    <Section title="Erased">
      {erasures.isError ? <ProblemNotice problem={problemText(erasures.error)} /> : null}
      {erasures.data?.erasures.length === 0 ? <p>Nobody’s data were erased yet.</p> : null}
      <ul>
        {erasures.data?.erasures.map(({ erasureId, at, by, reason, counts }) => (
          <li key={erasureId}>
            {`${clockTimeOrDay(at, now, clock)}, by ${by ?? 'the program'}: ${reasons[reason]}, ${Object.values(counts).reduce((sum, count) => sum + count, 0)} things`}
          </li>
        ))}
      </ul>
    </Section>
  )
}
