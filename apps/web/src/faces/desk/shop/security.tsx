import { listSecurityEvents } from '@bayledger/contract/security-events'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { staffQuery } from '../../../features/people/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { dayIn } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'
import { AccessRules } from './access-rules.tsx'
import { faultOfDays } from './day-range.ts'
import { securitySentence, securityTime } from './security-words.ts'
import type { ShopPageProps } from './shop-page.ts'

const everybody = 'everybody'

/** For an owner: who came in, who failed to, and whose secrets, roles and tablets changed. */
export function SecurityPage({ onOpen }: ShopPageProps) {
  const clock = useShopClock()
  const today = dayIn(clock.timeZone)
  const people = useQuery(staffQuery).data
  const [from, setFrom] = useState<string | null>(null)
  const [to, setTo] = useState<string | null>(null)
  const [staffId, setStaffId] = useState(everybody)
  const range = { from: from ?? today, to: to ?? today }
  const fault = faultOfDays(range)
  const query = { ...range, ...(staffId === everybody ? {} : { staffId }) }
  const listed = useQuery({
    queryKey: ['security-events', query],
    queryFn: ({ signal }) => call(listSecurityEvents, { query, signal }),
    enabled: fault === undefined,
  })
  const now = new Date().toISOString()
  return (
    <div className="stack">
      <AccessRules onOpen={onOpen} />
      <div className="row">
        <TextField label="First day" type="date" value={range.from} onChange={setFrom} />
        <TextField label="Last day" type="date" value={range.to} onChange={setTo} fault={fault} />
        <SelectField
          label="Who"
          value={staffId}
          onChange={setStaffId}
          options={[
            { value: everybody, label: 'Everybody' },
            ...[...(people?.staff ?? []), ...(people?.former ?? [])].map((person) => ({
              value: person.staffId,
              label: person.name,
            })),
          ]}
        />
      </div>
      {listed.isError ? (
        <ProblemNotice problem={problemText(listed.error)} onRetry={() => void listed.refetch()} />
      ) : listed.data === undefined ? (
        <StatusLine>{fault === undefined ? 'Reading what happened.' : null}</StatusLine>
      ) : listed.data.events.length === 0 ? (
        <p>Nothing happened on these days.</p>
      ) : (
        <ul className="security-list">
          {listed.data.events.map((event) => (
            <li key={event.id}>
              <span className="quiet">{securityTime(event, now, clock)}</span> {securitySentence(event)}
            </li>
          ))}
        </ul>
      )}
      {listed.data?.isWhole === false ? (
        <p>These are the newest 500. Choose fewer days for the others.</p>
      ) : null}
      <p className="quiet">Kept for 400 days. Nobody can change or remove a line here.</p>
    </div>
  )
}
