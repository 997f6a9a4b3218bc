import { randomUUID } from 'node:crypto'
import { versionOf } from '@bayledger/ledger/registry'
import pg from 'pg'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

it('an order whose head another process holds keeps its writers waiting and nobody else', async () => {
  const replay = await replayOn(shop)
  const held = freshCopy(shop.demo, 'T-2602')
  const free = freshCopy(shop.demo, 'T-2602')
  for (const { lines } of [held, free])
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'wheel.checked')
  const desk = await replay.as('devin', 'desk')
  const digest = held.lines.flatMap(({ sides }) => sides)[0]?.digest ?? ''
  const note = async (orderId: string): Promise<{ result: string; seq: number }> => {
    const entry = {
      id: randomUUID(),
      orderId,
      kind: 'note.added',
      version: versionOf('note.added'),
      payload: { words: digest },
      writtenAt: shop.clock.now().toISOString(),
      restsOn: [],
    }
    const { body } = await desk.post('/api/entries', { entries: [entry], sides: [] })
    return body.results[0]
  }
  const { seq } = await note(held.orderId)

  const other = new pg.Client(shop.adminUrl)
  await other.connect()
  await other.query('begin')
  await other.query('select from order_heads where order_id = $1 for update', [held.orderId])
  const waiting = [note(held.orderId), note(held.orderId)]
  const waits = async (): Promise<boolean> =>
    (await other.query('select from pg_stat_activity where wait_event_type = $1', ['Lock'])).rowCount === 1
  while (!(await waits()));
  expect(await note(free.orderId)).toMatchObject({ result: 'accepted' })
  expect(await note(free.orderId)).toMatchObject({ result: 'accepted' })
  expect(await waits()).toBe(true)

  await other.query('commit')
  await other.end()
  const later = await Promise.all(waiting)
  expect(later.map(({ result }) => result)).toEqual(['accepted', 'accepted'])
  expect(later.map((one) => one.seq).toSorted((one, another) => one - another)).toEqual([seq + 1, seq + 2])
})
