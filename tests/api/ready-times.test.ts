import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { versionOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { carriersTo, type MailServer, mailServer } from '../support/mail-server.ts'
import { agreeing, outboxHands } from '../support/outbox.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
let mail: MailServer
let texts: string
/** Orders of the demo day by number: two in the work, one that waits for a part, one before its estimate, one done. */
const orders = new Map<string, string>()
beforeAll(async () => {
  mail = await mailServer()
  await mail.start()
  texts = mkdtempSync(join(tmpdir(), 'bayledger-texts-'))
  shop = await startTestApp(undefined, carriersTo(mail, texts, 5_000))
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  for (const number of ['T-2601', 'T-2603', 'T-2607', 'T-2609', 'T-2616']) {
    const { orderId, lines } = freshCopy(shop.demo, number)
    await replay.sendUntil(lines)
    orders.set(number, orderId)
  }
  // Whoever looks after some minutes waits for what is ahead to be read again.
  shop.clock.advance(3 * 60_000)
})
afterAll(async () => {
  await shop.stop()
  await mail.stop()
  rmSync(texts, { recursive: true })
})

const idOf = (number: string): string => orders.get(number) ?? ''
const rowOf = async (number: string) =>
  (await desk.get(`/api/floor?orders=${idOf(number)}`).expect(200)).body.rows[0]
const slipOf = async (number: string) =>
  (await rowOf(number)).moves.find(({ code }: { code: string }) => code === 'promise-slips')
const newTime = async (number: string) =>
  (await desk.get(`/api/orders/${idOf(number)}/new-time`).expect(200)).body.later
const { edit, customerOf, newest } = outboxHands(() => ({ shop, replay, desk }))

describe('when a vehicle will be ready', () => {
  it('is computed from what is left of its plan, once there is one and until it is done', async () => {
    const { ready } = await rowOf('T-2603')
    expect(ready).toMatchObject({ is: 'about', partAt: null })
    expect(Date.parse(ready.at)).toBeGreaterThan(shop.clock.now().getTime() + 30 * 60_000)
    expect(Date.parse(ready.at)).toBeLessThan(shop.clock.now().getTime() + 4 * 60 * 60_000)
    expect((await rowOf('T-2609')).ready).toBeNull()
    expect((await rowOf('T-2601')).ready).toBeNull()
  })

  it('is not before the part comes that it waits for', async () => {
    const { ready } = await rowOf('T-2607')
    expect(ready.partAt).toBe('2026-01-14T15:00:00.000Z')
    expect(ready.at > ready.partAt).toBe(true)
  })

  it('costs the floor’s page one query, as without it', async () => {
    await rowOf('T-2603')
    const query = vi.spyOn(shop.parts.pool, 'query')
    await desk.get('/api/floor').expect(200)
    const names = query.mock.calls.map(([asked]) => (asked as unknown as { name?: string }).name)
    query.mockRestore()
    expect(names.filter((name) => ['floor', 'ready', 'step-times'].includes(name ?? ''))).toEqual(['floor'])
  })

  it('is read by the customer in their language', async () => {
    const open = async (number: string) => {
      const { body: link } = await desk.post(`/api/orders/${idOf(number)}/links`).expect(201)
      const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
      const phone = shop.withCookies(cookiesIn(opened))
      return (await phone.get('/api/customer/order').expect(200)).body.ready
    }
    expect(await open('T-2603')).toMatch(/^We expect it to be ready by about 1:\d\d\u00a0PM\.$/)
    expect(await open('T-2607')).toMatch(
      /^We are waiting for a part that should come by Wed, Jan 14, 10:00\u00a0AM\. /,
    )
    expect(await open('T-2609')).toBeNull()
    await edit(idOf('T-2603'), { language: 'es' })
    expect(await open('T-2603')).toMatch(/^Calculamos que estará listo aproximadamente a esta hora: 1:\d\d/)
    await edit(idOf('T-2603'), { language: 'en' })
  })
})

describe('a promise that slips', () => {
  it('brings the order to the desk with what to say, and is kept again once they were called', async () => {
    const [slip] = (await rowOf('T-2616')).moves
    expect(slip).toMatchObject({ mover: 'desk', code: 'promise-slips' })
    expect(slip.words).toMatch(/^Tell the customer: ready about \d+ min after the promise\.$/)
    const later = await newTime('T-2616')
    expect(later.sentence).toMatch(
      /^Your .+ will be ready later than we said: by about 12:\d\d\u00a0PM instead of 12:00\u00a0PM\. We are sorry\.$/,
    )
    const entry = (kind: 'contact.made' | 'stay.changed', payload: object) => ({
      ...{ id: randomUUID(), orderId: idOf('T-2616'), kind, version: versionOf(kind), payload, restsOn: [] },
      writtenAt: shop.clock.now().toISOString(),
    })
    const { body } = await desk
      .post('/api/entries', {
        entries: [
          entry('contact.made', { channel: 'telephone', outcome: 'reached', words: null }),
          entry('stay.changed', { waitsHere: false, promisedAt: later.promisedAt }),
        ],
        sides: [],
      })
      .expect(200)
    expect(body.results.map(({ result }: { result: string }) => result)).toEqual(['accepted', 'accepted'])
    expect(await slipOf('T-2616')).toBeUndefined()
    expect(await newTime('T-2616')).toBeNull()
    expect((await rowOf('T-2616')).promisedAt).toBe(later.promisedAt)
  })

  it('is sent with the new promise, once, where the customer agreed to it', async () => {
    const orderId = idOf('T-2607')
    await edit(orderId, { ...agreeing, mayEmail: false, mayText: false })
    const before = await newTime('T-2607')
    expect(before.channels).toEqual([])
    const entryId = randomUUID()
    const send = () =>
      desk.post(`/api/orders/${orderId}/new-time`, {
        entryId,
        promisedAt: before.promisedAt,
        channel: 'email',
      })
    expect((await send().expect(409)).body.code).toBe('MESSAGE_NOT_SENT')
    expect((await rowOf('T-2607')).promisedAt).not.toBe(before.promisedAt)
    await edit(orderId, agreeing)
    expect((await newTime('T-2607')).channels).toEqual(['email', 'text'])
    const first = await send().expect(201)
    expect((await send().expect(201)).body).toEqual(first.body)
    const { entries } = (await desk.get(`/api/orders/${orderId}`).expect(200)).body
    expect(entries.at(-1)).toMatchObject({
      ...{ id: entryId, kind: 'stay.changed' },
      payload: { promisedAt: before.promisedAt },
    })
    expect(await slipOf('T-2607')).toBeUndefined()
    const arrived = mail.arrived.length
    await shop.deliver()
    await shop.deliver()
    expect(mail.arrived).toHaveLength(arrived + 1)
    const letter = mail.arrived.at(-1)
    expect(letter?.to).toEqual([(await customerOf(orderId)).email])
    expect(letter?.text).toContain('will be ready later than we said. The new time: Wed, Jan 14, ')
    expect(await newest(orderId)).toMatchObject({ purpose: 'new-time', state: 'handed-over' })
  })
})

describe('at closing', () => {
  it('is tomorrow what is not ready today, and a part that did not come has no date any more', async () => {
    shop.clock.set('2026-01-12T22:55:00.000Z')
    desk = await shop.desk('devin')
    expect((await rowOf('T-2603')).ready.at).toMatch(/^2026-01-13T1[3-6]/)
    shop.clock.set('2026-01-14T16:00:00.000Z')
    desk = await shop.desk('devin')
    expect((await rowOf('T-2607')).ready).toEqual({ is: 'part-without-date' })
  })
})
