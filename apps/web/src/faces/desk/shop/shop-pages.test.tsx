import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { renderToStaticMarkup } from 'react-dom/server'
import { MemoryRouter } from 'react-router'
import { describe, expect, it } from 'vitest'
import { tamberStreet } from '../../../../../../prisma/seeds/demo/places.ts'
import { ConflictNotice } from '../../../ui/record/conflict-notice.tsx'
import { RecordHistory } from '../../../ui/record/record-history.tsx'
import { InstrumentsPage } from './instruments.tsx'
import { placeRows, placeValues } from './place-rows.ts'
import { PlacesPage } from './places.tsx'

const { id, ...content } = tamberStreet
const place = { id, version: 3, content, facts: {} }
const wrench = {
  id: '3f1c7a52-0d1e-4c55-9b6e-6c1f0b7d2a01',
  version: 1,
  content: {
    kind: 'wrench',
    code: 'W-07',
    locationId: id,
    quarantined: false,
    why: null,
    rangeLow: 30,
    rangeHigh: 250,
    rangeUnit: 'lbf·ft',
    accuracyPercent: 4,
    calibratedOn: null,
    dueOn: '2026-06-15',
    certificate: null,
  },
  facts: { cycles: 1_220 },
}
const clock = { timeZone: 'America/New_York' }
const nothing = () => undefined

/** What a page shows with these answers of the service, as HTML. */
const drawn = (page: React.ReactNode): string => {
  const client = new QueryClient()
  client.setQueryData(['places'], [place])
  client.setQueryData(['registered-instruments'], [wrench])
  client.setQueryData(['settings'], {
    shop: { shopId: id, name: 'Tamber Street' },
    locations: [
      { locationId: id, name: 'Tamber Street', altitudeFeet: 820, timeZone: clock.timeZone, lawProfile: {} },
    ],
    settings: [],
  })
  return renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <MemoryRouter>{page}</MemoryRouter>
    </QueryClientProvider>,
  )
}

describe('an owner’s page', () => {
  it('lists the records, each as a button with its line, and offers to add one', () => {
    const html = drawn(<PlacesPage open={null} onOpen={nothing} />)
    expect(html).toContain('<strong>Tamber Street</strong>')
    expect(html).toContain('14 Tamber Street, Brindle Falls · 6 bays · 820 ft')
    expect(html).toContain('Add a place')
    expect(html).toContain('1 place.')
  })

  it('edits one row by row, each control with its label and its hint', () => {
    const html = drawn(<PlacesPage open={id} onOpen={nothing} />)
    for (const row of placeRows(placeValues(content as Parameters<typeof placeValues>[0])))
      expect(html, row.key).toContain(row.label)
    expect(html).toContain('value="07:15-17:30"')
    expect(html).toContain('Pressures are corrected with it.')
  })

  it('says of a record that is gone that it is gone', () => {
    expect(drawn(<PlacesPage open="gone" onOpen={nothing} />)).toContain(
      'This shop has no such place any more.',
    )
  })

  it('shows beside a wrench what counts on it, and beside a new one nothing', () => {
    expect(drawn(<InstrumentsPage open={wrench.id} onOpen={nothing} />)).toContain(
      'Every wheel torqued with W-07',
    )
    expect(drawn(<InstrumentsPage open="new" onOpen={nothing} />)).not.toContain('Every wheel torqued')
  })
})

describe('two versions after a lost race', () => {
  const rows = placeRows({})
  const typed = placeValues(content as Parameters<typeof placeValues>[0])
  const notice = (saved: object) =>
    renderToStaticMarkup(
      <ConflictNotice
        rows={rows}
        typed={typed}
        conflict={{ version: 4, values: { ...typed, ...saved } }}
        busy={false}
        onTake={nothing}
        onTop={nothing}
        onGiveUp={nothing}
      />,
    )

  it('stand side by side, the rows that differ alone', () => {
    const html = notice({ altitudeFeet: '830' })
    expect(html).toContain('<th scope="row">Altitude</th><td>820 ft</td><td>830 ft</td>')
    expect(html).not.toContain('<th scope="row">Bays</th>')
  })

  it('are said to be the same where they are', () => {
    expect(notice({})).toContain('Nothing is left to save.')
  })
})

describe('a history', () => {
  it('says who changed what, newest first, and offers every version but the newest again', () => {
    const html = renderToStaticMarkup(
      <RecordHistory
        history={[
          { version: 2, content: { ...content, bays: 7 }, by: 'M. Ashby', at: '2026-01-12T16:40:00.000Z' },
          { version: 1, content, by: null, at: '2026-01-09T16:40:00.000Z' },
        ]}
        rows={placeRows}
        toValues={(one) => placeValues(one as Parameters<typeof placeValues>[0])}
        clock={clock}
        now="2026-01-12T17:00:00.000Z"
        busy={false}
        onWriteAgain={nothing}
      />,
    )
    expect(html).toContain('<strong>Version 2</strong>, by M. Ashby Jan 12, 11:40 AM')
    expect(html).toContain('Bays: 6 → 7')
    expect(html).toContain('as it was found Jan 9, 11:40 AM')
    expect(html.match(/Write version \d+ again/g)).toEqual(['Write version 1 again'])
  })
})
