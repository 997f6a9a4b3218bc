import { randomUUID } from 'node:crypto'
import type { Connection } from './connection.ts'
import { alternate, interleave, type Work } from './interleave.ts'
import { addNote, type RunningShop, sealNotes } from './running-shop.ts'
import type { Line } from './table.ts'

const warmUp = 2_000
const mostClients = 32
const writersAtOne = 64
/** More than the rounds below write together. */
const notesAhead = 100_000

/** Appends over HTTP against one-row commits on the same PostgreSQL, which share flushes to disk as best they can. */
export const benchAppend = async (shop: RunningShop): Promise<Line[]> => {
  const desks = await shop.desks(mostClients)
  const [first] = desks
  const orders = await shop.openOrders(mostClients)
  const [crowded, long, short] = await shop.openOrders(3)
  if (!first || !crowded || !long || !short) throw new Error('a desk and three orders are needed')
  await shop.pool.query('create table bench_commits (id uuid primary key, words text not null)')
  const commit: Work = () =>
    shop.pool.query({
      name: 'bench-commit',
      text: 'insert into bench_commits (id, words) values ($1, $2)',
      values: [randomUUID(), 'The customer called.'],
    })
  const note = (desk: Connection, index: number): Work => {
    const orderId = orders[index % orders.length] ?? ''
    return () => addNote(desk, orderId)
  }
  const clients = (count: number) => desks.slice(0, count).map(note)
  sealNotes(notesAhead)
  await fill(desks, orders, warmUp)

  const one = await interleave(note(first, 0), commit, { blocks: 12, block: 25, seconds: 10 })
  const eight = await alternate(clients(8), Array(8).fill(commit), { rounds: 5, milliseconds: 1_500 })
  const many = await alternate(clients(mostClients), Array(mostClients).fill(commit), {
    rounds: 5,
    milliseconds: 1_500,
  })
  const crowd = await shop.desks(writersAtOne)
  const together = await alternate(
    crowd.map((desk) => () => addNote(desk, crowded)),
    Array(mostClients).fill(commit),
    { rounds: 2, milliseconds: 1_500 },
  )
  await fill(desks, [short], 40)
  await fill(desks, [long], 1_000)
  const grown = await interleave(
    () => addNote(first, long),
    () => addNote(first, short),
    { blocks: 10, block: 20, seconds: 10 },
  )

  const what = 'POST /api/entries, a note'
  const others = { against: 'one-row commits by as many' } as const
  return [
    { name: 'append.one.ratio', what, against: 'one-row commit', ...one, of: 'p50', goal: 3 },
    {
      name: 'append.throughput.ratio',
      what: 'the same, 8 clients',
      ...others,
      ...eight,
      of: 'perSecond',
      goal: 0.45,
    },
    { name: 'append.p99.ratio', what: 'the same, 8 clients', ...others, ...eight, of: 'p99', goal: 2.5 },
    {
      name: 'append.32.ratio',
      what: `the same, ${mostClients} clients`,
      ...others,
      ...many,
      of: 'perSecond',
      goal: 0.6,
    },
    {
      name: 'append.one-order.perSecond',
      what: `the same, ${writersAtOne} writers at one order`,
      against: `one-row commits by ${mostClients}`,
      ...together,
      of: 'perSecond',
      goal: null,
      least: 500,
    },
    {
      name: 'append.1000.ratio',
      what: 'the same to an order of 1,000 entries',
      against: 'the same to one of 40',
      ...grown,
      of: 'p50',
      goal: 1.3,
    },
  ]
}

/** Writes `count` notes, spread over the orders, by all desks at once. */
const fill = async (
  desks: readonly Connection[],
  orders: readonly string[],
  count: number,
): Promise<void> => {
  let next = 0
  await Promise.all(
    desks.map(async (desk) => {
      while (next < count) {
        const orderId = orders[next % orders.length] ?? ''
        next += 1
        await addNote(desk, orderId)
      }
    }),
  )
}
