import type { FloorRow } from '@bayledger/contract/orders'
import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { renderToStaticMarkup } from 'react-dom/server'
import { MemoryRouter } from 'react-router'
import { describe, expect, it } from 'vitest'
import { FloorList } from '../floor-list.tsx'
import { WallBoard } from './wall-board.tsx'
import { vehiclesOnWall, wallPages } from './wall-rows.ts'

const asOf = '2026-01-12T16:40:00.000Z'
const rows = Array.from(
  { length: 400 },
  (_, index): FloorRow => ({
    orderId: `order-${index}`,
    locationId: 'here',
    number: `T-${3_000 + index}`,
    seq: 9,
    openedAt: '2026-01-12T13:00:00.000Z',
    promisedAt: '2026-01-12T19:30:00.000Z',
    ready: null,
    waitsHere: index % 5 === 0,
    assignedTo: null,
    isOpen: true,
    sealed: false,
    customerName: `Wilhelmina Featherstonehaugh ${index}`,
    vehicleDescription: '2021 Tarn wagon',
    color: 'gray',
    plate: `XKC-${1_000 + index}`,
    moves: [
      {
        mover: index % 2 === 0 ? 'bay' : 'desk',
        code: 'arrival-open',
        wheel: null,
        values: {},
        words: 'Check the vehicle as it arrived.',
        since: '2026-01-12T15:00:00.000Z',
        until: null,
      },
    ],
  }),
)
const nodes = (html: string): number => html.match(/<[a-z]/g)?.length ?? 0

describe('400 open orders', () => {
  it('are portions of one screen on the wall, each once, in few elements', () => {
    const pages = wallPages(rows)
    expect(pages).toHaveLength(Math.ceil(400 / vehiclesOnWall))
    expect(new Set(pages.flat().map(({ row }) => row.orderId)).size).toBe(400)
    const html = renderToStaticMarkup(
      <WallBoard rows={pages[0] ?? []} asOf={asOf} clock={{ timeZone: 'America/New_York' }} />,
    )
    expect(nodes(html)).toBeLessThan(60)
  })

  it('say on the wall neither who brought a vehicle nor its whole plate', () => {
    const html = wallPages(rows)
      .map((page) =>
        renderToStaticMarkup(<WallBoard rows={page} asOf={asOf} clock={{ timeZone: 'America/New_York' }} />),
      )
      .join('')
    expect(html).not.toMatch(/Featherstonehaugh|XKC/)
    expect(html).toContain('T-3000 · …000 · 2021 Tarn wagon · gray')
    expect(html).toContain('by 2:30')
  })

  it('have the day of a promise that is not of today', () => {
    const [page = []] = wallPages(rows.slice(0, 1))
    const html = renderToStaticMarkup(
      <WallBoard rows={page} asOf="2026-01-14T16:40:00.000Z" clock={{ timeZone: 'America/New_York' }} />,
    )
    expect(html).toContain('late, Jan 12, 2:30')
  })

  it('say that a wheel is off also where the customer has to be told something first', () => {
    const [row] = rows
    if (row === undefined) throw new Error('no row')
    const [move] = row.moves
    const of = (code: string, words: string, wheel: 'LF' | null) =>
      ({ ...move, code, words, wheel }) as typeof move
    const moves = [
      of('promise-slips', 'Tell the customer.', null),
      of('wheel-off', 'Left front wheel is off.', 'LF'),
    ]
    const [page = []] = wallPages([{ ...row, moves: moves.flatMap((one) => one ?? []) }])
    const html = renderToStaticMarkup(
      <WallBoard rows={page} asOf={asOf} clock={{ timeZone: 'America/New_York' }} />,
    )
    expect(html).toContain('Tell the customer. Also: wheel off.')
  })

  it('have at most 14 elements each on the floor list, which draws those in sight', () => {
    const client = new QueryClient()
    client.setQueryData(['floor'], { asOf, rows })
    const html = renderToStaticMarkup(
      <QueryClientProvider client={client}>
        <MemoryRouter>
          <FloorList />
        </MemoryRouter>
      </QueryClientProvider>,
    )
    expect(nodes(html)).toBeGreaterThan(400)
    expect(nodes(html)).toBeLessThan(400 * 14)
  })
})
