import { getNumbers, type PictureCode } from '@bayledger/contract/numbers'
import { dayIn } from '@bayledger/reckoning/ready/zoned-time'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'
import { NumberPicture } from './number-picture.tsx'
import { errorWords } from './number-words.ts'

/** Each picture's question, and what is counted; `count` names what one of a bar is. */
const questions: Readonly<Record<PictureCode, { title: string; note: string; counts: string }>> = {
  promises: {
    title: 'Were promises kept?',
    note: 'The last step closed against what was promised before it.',
    counts: 'Orders',
  },
  'ready-error': {
    title: 'What were the ready times worth?',
    note: 'What would have been said at each Yes, for a vehicle that is begun at once, against when it was ready.',
    counts: 'Orders',
  },
  comebacks: {
    title: 'What did vehicles come back for?',
    note: 'Orders that were opened as a comeback, by the cause that was confirmed then.',
    counts: 'Comebacks',
  },
  'comeback-causes': {
    title: 'Why did vehicles come back?',
    note: 'Comebacks by the cause that was recorded at the desk: our work, a part, new damage, nothing found, or something else.',
    counts: 'Comebacks',
  },
  causes: {
    title: 'What was found?',
    note: 'The confirmed cause of the light, one an order.',
    counts: 'Orders',
  },
  consent: {
    title: 'What do customers say Yes to?',
    note: 'Each bundle that was answered, by kind.',
    counts: 'Yes',
  },
  'job-minutes': {
    title: 'How long does a job take?',
    note: 'Time at its steps, pauses left out. Bar: the middle one. Line: half of them are within it.',
    counts: 'Minutes',
  },
  'step-minutes': {
    title: 'How long does a step take?',
    note: 'From the entry before it, pauses left out. By step, never by person.',
    counts: 'Minutes',
  },
  'sensor-lots': {
    title: 'Which lots do sensors fail from?',
    note: 'Sensors that had failed on arrival, by the lot under which we fitted them.',
    counts: 'Sensors',
  },
  'sensor-ages': {
    title: 'How old are sensors that fail?',
    note: 'Since they were made or fitted here, else as the technician read it.',
    counts: 'Sensors',
  },
}

/** Ninety days: a season's worth of orders. */
const daysShown = 90

/** What the orders of a range of days tell the owner, as pictures that open down to their orders. */
export function NumbersPage() {
  const clock = useShopClock()
  const settings = useQuery(settingsQuery)
  const today = dayIn(new Date(), clock.timeZone)
  const [from, setFrom] = useState(dayIn(new Date(Date.now() - daysShown * 86_400_000), clock.timeZone))
  const [until, setUntil] = useState(today)
  const [place, setPlace] = useState('all')
  const isRange = from !== '' && until !== '' && from <= until
  const found = useQuery({
    queryKey: ['numbers', from, until, place],
    queryFn: ({ signal }) =>
      call(getNumbers, { query: { from, until, ...(place === 'all' ? {} : { locationId: place }) }, signal }),
    enabled: isRange,
  })
  const places = settings.data?.locations ?? []
  return (
    <div className="stack">
      <div className="record-tools">
        <TextField
          label="From"
          type="date"
          value={from}
          onChange={setFrom}
          fault={
            from > until && until !== ''
              ? 'This day is after the last one. Choose an earlier day.'
              : undefined
          }
        />
        <TextField label="Until" type="date" value={until} onChange={setUntil} />
      </div>
      {places.length < 2 ? null : (
        <ChoiceGroup
          label="At"
          options={[
            { value: 'all', label: 'All places' },
            ...places.map(({ locationId, name }) => ({ value: locationId, label: name })),
          ]}
          value={place}
          onChange={setPlace}
        />
      )}
      {found.isError ? (
        <ProblemNotice problem={problemText(found.error)} onRetry={() => void found.refetch()} />
      ) : null}
      <StatusLine>{isRange ? statusWords(found.data?.orders.length) : null}</StatusLine>
      {found.data?.pictures.map((picture) => {
        const { title, note, counts } = questions[picture.code]
        return (
          <Section key={picture.code} title={title}>
            <p className="quiet">{note}</p>
            {picture.code === 'ready-error' ? <p>{errorWords(found.data.readyError)}</p> : null}
            <NumberPicture picture={picture} counts={counts} orders={found.data.orders} />
          </Section>
        )
      })}
    </div>
  )
}

const statusWords = (count: number | undefined): string => {
  if (count === undefined) return 'Counting.'
  if (count === 0) return 'No order ended in these days.'
  return `${count} ${count === 1 ? 'order' : 'orders'} ended in these days.`
}
