import { type DayMovement, getDay } from '@bayledger/contract/day'
import { addressOf } from '@bayledger/contract/endpoint'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'react-router'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { clockTime, dayIn, money } from '../../../lib/format.ts'
import { moneyWords } from '../../../lib/money-words.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Line, Lines, Section } from '../../../ui/section.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { GiveBackOf } from '../sheet/give-back.tsx'
import { rememberedPlace, rememberPlace } from '../write-up/desk-place.ts'

const methodWords = {
  card: 'Card',
  cash: 'Cash',
  check: 'Check',
  account: 'Account',
  'none-due': 'Nothing due',
} as const

/** The end of the day at a place, first that of this desk: what was paid and given back, what is still owed, and the same as a file. */
export function DayRoute() {
  const settings = useQuery(settingsQuery)
  const [chosen, setChosen] = useState<string | null>(null)
  const [typed, setTyped] = useState<string | null>(null)
  const places = settings.data?.locations ?? []
  const here = chosen ?? rememberedPlace(places.map(({ locationId }) => locationId))
  const place = places.find(({ locationId }) => locationId === here) ?? places[0]
  if (place === undefined) return null
  const day = typed ?? dayIn(place.timeZone)
  return (
    <div className="stack">
      <title>The day · Bayledger desk</title>
      <h1>The day</h1>
      {places.length < 2 ? null : (
        <ChoiceGroup
          label="At"
          options={places.map(({ locationId, name }) => ({ value: locationId, label: name }))}
          value={place.locationId}
          onChange={(locationId) => {
            rememberPlace(locationId)
            setChosen(locationId)
          }}
        />
      )}
      <TextField label="Day" type="date" value={day} onChange={setTyped} />
      {day === '' ? null : <DaySheet locationId={place.locationId} day={day} timeZone={place.timeZone} />}
    </div>
  )
}

function DaySheet({ timeZone, ...query }: { locationId: string; day: string; timeZone: string }) {
  const { data, error } = useQuery({
    queryKey: ['orders', 'day', query.locationId, query.day],
    queryFn: ({ signal }) => call(getDay, { query, signal }),
  })
  const [givingBack, setGivingBack] = useState<DayMovement | null>(null)
  if (error) return <ProblemNotice problem={problemText(error)} />
  if (data === undefined) return null
  return (
    <>
      <Section title="Received and given back">
        {data.totals.length === 0 ? <p>Nothing was paid on this day.</p> : null}
        <Lines>
          {data.totals.map(({ method, receivedCents, returnedCents }) => (
            <Line key={method} name={methodWords[method]}>
              {money(receivedCents)}
              {returnedCents === 0 ? '' : `, given back ${money(returnedCents)}`}
            </Line>
          ))}
        </Lines>
      </Section>
      <Section title="Payments">
        {data.movements.map((one) => (
          <p key={`${one.orderId} ${one.at} ${one.method} ${one.amountCents}`}>
            <Link to={deskOrderPath(one.orderId)}>{one.number}</Link>{' '}
            <strong>{moneyWords(one.amountCents)}</strong> {methodWords[one.method].toLowerCase()}{' '}
            <span className="quiet">
              {clockTime(one.at, { timeZone })}, {one.by}
              {one.isCorrection ? ', correction' : ''}
            </span>{' '}
            {(one.amountCents ?? 0) > 0 ? (
              <Button
                aria-label={`Give money back: ${one.number}, ${moneyWords(one.amountCents)}`}
                onClick={() => setGivingBack(one)}
              >
                Give money back
              </Button>
            ) : null}
          </p>
        ))}
        <p>
          <a href={addressOf('/api/day.csv', {}, query)} download={`payments-${query.day}.csv`}>
            These payments as a file (CSV)
          </a>
        </p>
      </Section>
      {givingBack === null ? null : (
        <GiveBackOf
          orderId={givingBack.orderId}
          method={givingBack.method}
          onClose={() => setGivingBack(null)}
        />
      )}
      <Section title="Not settled">
        {data.balances.length === 0 ? <p>Nothing is owed.</p> : null}
        {data.balances.map(({ orderId, number, customer, owedCents, givenBackCents }) => (
          <p key={orderId}>
            <Link to={deskOrderPath(orderId)}>{number}</Link> {customer}:{' '}
            {owedCents < 0
              ? 'paid too much by'
              : givenBackCents > 0
                ? `open after ${money(givenBackCents)} was given back:`
                : 'owes'}{' '}
            <strong>{money(Math.abs(owedCents))}</strong>
          </p>
        ))}
      </Section>
    </>
  )
}
