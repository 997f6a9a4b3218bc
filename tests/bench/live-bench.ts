import { setTimeout as wait } from 'node:timers/promises'
import { addNote, type RunningShop } from './running-shop.ts'
import { percentile } from './statistics.ts'
import type { Figure } from './table.ts'

const screens = 500
const openOrders = 1_200
/** As long as a screen waits at most before it reads (`gather-wakes.ts` of the web client). */
const mostJitterMs = 250

/**
 * Many screens that show one order: how long after a note the last of them is woken, and until all of them have read
 * it; then the floor list with 1,200 open orders, a page at a time.
 */
export const benchLive = async (shop: RunningShop): Promise<Figure[]> => {
  const [orderId = ''] = await shop.openOrders(1)
  const [desk] = await shop.desks(1)
  if (!desk) throw new Error('no desk')
  const woken = await shop.listen(screens)
  const readers = await shop.desks(screens)
  const lasts: number[] = []
  const catchUps: number[] = []
  for (let round = 0; round < 5; round += 1) {
    const { head } = JSON.parse((await desk.call('GET', `/api/orders/${orderId}/entries?after=0`)).body)
    const nexts = woken.map((stream) => stream.next(orderId))
    await addNote(desk, orderId)
    const written = performance.now()
    const last = Promise.all(nexts).then(() => performance.now() - written)
    const all = Promise.all(
      nexts.map(async (next, index) => {
        await next
        await wait(Math.random() * mostJitterMs)
        const reply = await readers[index]?.call('GET', `/api/orders/${orderId}/entries?after=${head.seq}`)
        if (JSON.parse(reply?.body ?? '{}').entries?.length !== 1) throw new Error('a screen missed the note')
      }),
    ).then(() => performance.now() - written)
    lasts.push(await last)
    catchUps.push(await all)
  }
  await shop.openOrders(openOrders)
  const pages: number[] = []
  for (let round = 0; round < 10; round += 1)
    for (let query: string | null = ''; query !== null; ) {
      const begun = performance.now()
      const { body } = await desk.call('GET', `/api/floor${query}`)
      pages.push(performance.now() - begun)
      const next: string | null = JSON.parse(body).next
      query = next === null ? null : `?cursor=${encodeURIComponent(next)}`
    }
  return [
    { name: 'live.last.ms', value: at(lasts, 0.5), unit: 'ms', goal: 250 },
    { name: 'live.catchup.s', value: at(catchUps, 0.5) / 1_000, unit: 's', goal: 2 },
    { name: 'floor.1200.p95.ms', value: at(pages, 0.95), unit: 'ms', goal: 5 },
  ]
}

const at = (values: readonly number[], share: number): number =>
  percentile(
    values.toSorted((one, other) => one - other),
    share,
  )
