import { spawn } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, demoNow, startTestApp, type TestApp } from '../support/app.ts'
import { csvCaller } from '../support/csv-caller.ts'
import { carriersTo, type MailServer, mailServer } from '../support/mail-server.ts'
import { agreeing, outboxHands } from '../support/outbox.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { sideOf, writerOn } from '../support/write-entry.ts'

const hour = 60 * 60_000

let shop: TestApp
let replay: Replay
let desk: Caller
let mail: MailServer
let texts: string
beforeAll(async () => {
  mail = await mailServer()
  await mail.start()
  texts = mkdtempSync(join(tmpdir(), 'bayledger-texts-'))
  // A server that answers late is left after five seconds here: longer than a busy machine takes to answer itself.
  shop = await startTestApp(undefined, carriersTo(mail, texts, 5_000))
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
})
afterAll(async () => {
  await shop.stop()
  await mail.stop()
  rmSync(texts, { recursive: true })
})
/** Every test begins at an hour that is not quiet, with an outbox in which nothing else is due. */
beforeEach(async () => {
  mail.becomes('takes')
  shop.clock.set(demoNow)
  await nothingDue()
})

const now = () => ({ shop, replay, desk })
const { deliver, nothingDue, shownOrder, sentOrder, putOff, listed, newest, customerOf, edit, send } =
  outboxHands(now)

describe('the estimate by e-mail', () => {
  it('is written with the entry that says so, goes once, and opens the customer’s page', async () => {
    const orderId = await shownOrder()
    await edit(orderId, agreeing)
    const entryId = randomUUID()
    const first = await send(orderId, { entryId }).expect(201)
    expect((await send(orderId, { entryId }).expect(201)).body).toEqual(first.body)
    const { entries } = (await desk.get(`/api/orders/${orderId}`).expect(200)).body
    const { linkId } = await newest(orderId)
    expect(entries.at(-1)).toMatchObject({
      id: entryId,
      kind: 'estimate.shown',
      payload: { channel: 'link', linkId },
    })
    expect(await newest(orderId)).toMatchObject({ state: 'waiting', tries: 0 })
    const before = mail.arrived.length
    await deliver()
    await deliver()
    expect(mail.arrived).toHaveLength(before + 1)
    const letter = mail.arrived.at(-1)
    const { email, name } = await customerOf(orderId)
    expect(letter?.to).toEqual([email])
    expect(letter?.header('subject')).toMatch(/^Your .*: what we found, and what it costs/)
    expect(letter?.header('from')).toContain('Tamber Street Tire & Wheel')
    expect(letter?.header('message-id')).toBe(`<${first.body.messageId}@tamber.example>`)
    expect(letter?.header('content-language')).toBe('en')
    expect(letter?.text).toContain(name)
    const secret = /customer#([\w-]+)/.exec(letter?.text ?? '')?.[1]
    const opened = await shop.nobody.post('/api/customer/session', { secret }).expect(201)
    const page = (await shop.withCookies(cookiesIn(opened)).get('/api/customer/order').expect(200)).body
    expect(page.orderNumber).toBe((await desk.get(`/api/orders/${orderId}`).expect(200)).body.number)
    expect(await newest(orderId)).toMatchObject({ state: 'handed-over', tries: 1, recipient: email })
    const { rows } = await shop.deps.pool.query('select m::text as line from messages m')
    for (const { line } of rows) expect(line).not.toContain(secret)
  })

  it('is in the language of the card, which may change while it waits', async () => {
    const orderId = await sentOrder()
    await edit(orderId, { language: 'es' })
    await deliver()
    const letter = mail.arrived.at(-1)
    expect(letter?.header('content-language')).toBe('es')
    expect(letter?.header('subject')).toMatch(/^Su .*: qué encontramos y cuánto cuesta/)
    expect(letter?.text).toContain('aquí puede leer qué encontramos')
    expect(letter?.text).toContain('Para no recibir más de estos mensajes')
  })

  it('has the shop’s own words where it has written them', async () => {
    const csv = csvCaller(await shop.desk('marguerite'), '/api/register/texts')
    const own = 'message_estimate_en,"Dear {name}: {link}"\r\nmessage_estimate_es,"Estimado {name}: {link}"'
    await csv.take(`text,words\r\n${own}`)
    const orderId = await sentOrder()
    await deliver()
    expect(mail.arrived.at(-1)?.text).toMatch(/^Dear .*: http.*customer#[\w-]+\n/)
    await edit(orderId, { language: 'es' })
    await send(orderId).expect(201)
    await deliver()
    expect(mail.arrived.at(-1)?.text).toMatch(/^Estimado .*: http.*customer#[\w-]+\n/)
  })

  it('does not go once its link or itself was withdrawn', async () => {
    const orderId = await sentOrder()
    const { messageId } = await newest(orderId)
    await desk.delete(`/api/orders/${orderId}/messages/${messageId}`).expect(204)
    const late = await desk.delete(`/api/orders/${orderId}/messages/${messageId}`).expect(409)
    expect(late.body.code).toBe('MESSAGE_NOT_WAITING')
    const before = mail.arrived.length
    await deliver()
    expect(mail.arrived).toHaveLength(before)
    expect(await newest(orderId)).toMatchObject({ state: 'withdrawn' })
  })
})

describe('a mail server', () => {
  it('that refuses the mailbox or the letter is quoted, and is not asked again', async () => {
    const bounced = await sentOrder()
    mail.becomes('no-such-mailbox')
    await deliver()
    expect(await newest(bounced)).toMatchObject({
      state: 'bounced',
      serverWords: expect.stringContaining('No such mailbox here'),
    })
    const onFloor = async () => {
      const { rows } = (await desk.get(`/api/floor?orders=${bounced}`).expect(200)).body
      return rows[0].moves.map(({ mover, code }: { mover: string; code: string }) => `${mover}: ${code}`)
    }
    expect(await onFloor()).toContain('desk: estimate-undelivered')
    expect(await onFloor()).not.toContain('customer: estimate-unanswered')
    // The customer has it another way: they are waited for again.
    shop.clock.advance(60_000)
    await desk.post(`/api/orders/${bounced}/links`).expect(201)
    expect(await onFloor()).toContain('customer: estimate-unanswered')
    // No order is opened later than those of the other tests: their vehicle would have come back.
    shop.clock.set(demoNow)
    const refused = await sentOrder()
    mail.becomes('refuses-the-letter')
    await deliver()
    expect(await newest(refused)).toMatchObject({
      state: 'refused',
      serverWords: expect.stringContaining('Looks like advertising'),
    })
    mail.becomes('takes')
    shop.clock.advance(hour)
    expect(await deliver()).toBe(0)
  })

  it.each([
    ['busy', /Try again later/],
    ['hangs', /timeout|Greeting never received/i],
    ['wrong-password', /Authentication failed/],
  ] as const)(
    'that is not ready (%s) is asked again, later and later, with the same letter',
    async (mood, words) => {
      const orderId = await sentOrder()
      const before = mail.arrived.length
      mail.becomes(mood)
      for (const minutes of [1, 2, 4, 8]) {
        expect(await deliver()).toBe(1)
        const { state, serverWords, nextTryAt } = await newest(orderId)
        expect(state).toBe('waiting')
        expect(serverWords).toMatch(words)
        expect(Date.parse(nextTryAt ?? '') - shop.clock.now().getTime()).toBe(minutes * 60_000)
        expect(await deliver()).toBe(0)
        shop.clock.advance(minutes * 60_000)
      }
      mail.becomes('takes')
      await deliver()
      expect(mail.arrived).toHaveLength(before + 1)
      const { state, messageId, tries } = await newest(orderId)
      expect({ state, tries }).toEqual({ state: 'handed-over', tries: 5 })
      expect(mail.arrived.at(-1)?.header('message-id')).toBe(`<${messageId}@tamber.example>`)
    },
  )

  it('that is down for a day gets each letter once when it is back, with a link that is good for a week', async () => {
    const orders = [await sentOrder(), await sentOrder()]
    const before = mail.arrived.length
    await mail.stop()
    for (let passed = 0; passed < 24; passed += 0.5) {
      await deliver()
      shop.clock.advance(hour / 2)
    }
    await mail.start()
    await deliver()
    await deliver()
    expect(mail.arrived).toHaveLength(before + 2)
    desk = await shop.desk('ottoline')
    for (const orderId of orders) expect(await newest(orderId)).toMatchObject({ state: 'handed-over' })
    const { links } = (await desk.get(`/api/orders/${orders[0]}/links`).expect(200)).body
    expect(Date.parse(links.at(-1).expiresAt) - shop.clock.now().getTime()).toBe(7 * 24 * hour)
    shop.clock.set(demoNow)
    desk = await shop.desk('ottoline')
  })

  it('that stays away for days is given up, and the desk sees it', async () => {
    const orderId = await sentOrder()
    mail.becomes('busy')
    await deliver()
    shop.clock.advance(5 * 24 * hour + hour)
    desk = await shop.desk('ottoline')
    await deliver()
    expect(await newest(orderId)).toMatchObject({
      state: 'given-up',
      serverWords: expect.stringContaining('451'),
    })
    shop.clock.set(demoNow)
    desk = await shop.desk('ottoline')
  })

  it('that took a letter of a service that was killed before it noted that gets the same letter, not another', async () => {
    const orderId = await sentOrder()
    const before = mail.arrived.length
    const child = spawn(
      process.execPath,
      ['tests/faults/support/deliver.ts', shop.url, mail.url, shop.clock.now().toISOString()],
      { stdio: 'inherit' },
    )
    const ended = once(child, 'exit')
    mail.onLetter(() => {
      child.kill('SIGKILL')
    })
    expect(await ended).toEqual([null, 'SIGKILL'])
    mail.onLetter(() => undefined)
    expect(mail.arrived).toHaveLength(before + 1)
    expect(await newest(orderId)).toMatchObject({ state: 'waiting', tries: 1 })
    expect(await deliver()).toBe(0)
    shop.clock.advance(6 * 60_000)
    await deliver()
    const ids = mail.arrived.slice(before).map((letter) => letter.header('message-id'))
    expect(ids).toHaveLength(2)
    expect(new Set(ids).size).toBe(1)
    const secrets = mail.arrived.slice(before).map(({ text }) => /customer#([\w-]+)/.exec(text)?.[1])
    expect(new Set(secrets).size).toBe(1)
    expect(await newest(orderId)).toMatchObject({ state: 'handed-over', tries: 2 })
  })

  it('gets one letter from two processes that look at the same time', async () => {
    await sentOrder()
    const before = mail.arrived.length
    await Promise.all([deliver(), deliver(), deliver()])
    expect(mail.arrived).toHaveLength(before + 1)
  })
})

describe('consent', () => {
  it('is needed, and so are an address and a way to send', async () => {
    const orderId = await shownOrder()
    const why = async (change: object, asking: object = {}) => {
      await edit(orderId, { ...agreeing, ...change })
      return (await send(orderId, asking).expect(409)).body.detail
    }
    expect(await why({ mayEmail: false })).toContain('has not agreed')
    expect(await why({ email: null })).toContain('no e-mail address')
    expect(await why({ phone: null }, { channel: 'text' })).toContain('no telephone number')
    expect(await why({}, { purpose: 'report' })).toContain('no sealed report')
    await edit(orderId, agreeing)
  })

  it('is looked at again when the message goes', async () => {
    const orderId = await sentOrder()
    await edit(orderId, { mayEmail: false })
    const before = mail.arrived.length
    await deliver()
    expect(mail.arrived).toHaveLength(before)
    expect(await newest(orderId)).toMatchObject({ state: 'withheld', reason: 'not-agreed' })
    await edit(orderId, agreeing)
  })

  it('ends in one click from a mail program of anybody, and not by opening the link', async () => {
    const orderId = await sentOrder()
    await deliver()
    const letter = mail.arrived.at(-1)
    expect(letter?.header('list-unsubscribe-post')).toBe('List-Unsubscribe=One-Click')
    const path = new URL(letter?.header('list-unsubscribe')?.slice(1, -1) ?? '').pathname
    const page = await shop.nobody.get(path).expect(200)
    expect(page.headers['content-type']).toContain('text/html')
    expect(page.text).toContain('End these messages')
    await send(orderId).expect(201)
    // RFC 8058, section 3.1: a POST of a form, from another host, without cookies.
    const click = await shop.inject({
      method: 'POST',
      url: path,
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
      payload: 'List-Unsubscribe=One-Click',
    })
    expect(click.statusCode).toBe(200)
    expect((await send(orderId).expect(409)).body.detail).toContain('has not agreed')
    const { choices } = await listed(orderId)
    expect(choices).toContainEqual({ purpose: 'job', channel: 'email', allowed: false })
    expect(choices).toContainEqual({ purpose: 'retorque', channel: 'email', allowed: true })
    await deliver()
    expect(await newest(orderId)).toMatchObject({ state: 'withheld', reason: 'not-agreed' })
    const { customerId } = await customerOf(orderId)
    await desk
      .put(`/api/customers/${customerId}/message-choices`, {
        purpose: 'job',
        channel: 'email',
        allowed: true,
      })
      .expect(204)
    await send(orderId).expect(201)
    await shop.nobody.get('/api/unsubscribe/aaaaaaaaaaaaaaaaaaaaaaaaaaaa').expect(404)
    const { text } = await shop.nobody.get('/api/unsubscribe/cut-off>').expect(404)
    expect(text).toContain('This link is not whole.')
  })
})

describe('the quiet hours of the place', () => {
  it('keep a message until they end, but for one that the customer waits for', async () => {
    const orderId = await sentOrder()
    // 22:00 at the place, in Eastern Standard Time.
    shop.clock.set('2026-01-13T03:00:00.000Z')
    desk = await shop.desk('ottoline')
    expect((await listed(orderId)).goesAt).toBe('2026-01-13T13:00:00.000Z')
    const before = mail.arrived.length
    await deliver()
    expect(mail.arrived).toHaveLength(before)
    expect(await newest(orderId)).toMatchObject({ nextTryAt: '2026-01-13T13:00:00.000Z', tries: 0 })
    await send(orderId, { inQuietHours: true }).expect(201)
    await deliver()
    expect(mail.arrived).toHaveLength(before + 1)
    shop.clock.set('2026-01-13T13:00:00.000Z')
    await deliver()
    expect(mail.arrived).toHaveLength(before + 2)
    shop.clock.set(demoNow)
    desk = await shop.desk('ottoline')
  })
})

describe('a text to a telephone', () => {
  it('is a file in the folder, once', async () => {
    const orderId = await sentOrder({ channel: 'text' })
    await deliver()
    const { messageId, state } = await newest(orderId)
    const file = JSON.parse(readFileSync(join(texts, `${messageId}.json`), 'utf8'))
    const handed = { id: messageId, to: expect.any(String), state: 'handed-over' }
    expect({ ...file, state }).toMatchObject(handed)
    expect(file.text).toContain('customer#')
    expect(readdirSync(texts).filter((name) => name.endsWith('.part'))).toEqual([])
  })
})

describe('the reminder of work put off', () => {
  const putOffOrder = async (day: string) => {
    const orderId = await shownOrder()
    await edit(orderId, agreeing)
    await putOff(orderId, day)
    expect(await newest(orderId)).toMatchObject({ purpose: 'deferred', dueAt: `${day}T12:00:00.000Z` })
    return orderId
  }
  const becomes = async (instant: string) => {
    shop.clock.set(instant)
    desk = await shop.desk('ottoline')
  }

  // The last of the file: an order of this vehicle has ended then, and the findings of the next one would be others.
  it('goes on the day that was agreed to who agreed, once the vehicle is gone and the quiet hours are over', async () => {
    const unasked = await putOffOrder('2026-02-10')
    const orderId = await putOffOrder('2026-02-12')
    const before = mail.arrived.length
    await becomes('2026-02-10T15:00:00.000Z')
    await deliver()
    expect(await newest(unasked)).toMatchObject({ state: 'withheld', reason: 'not-agreed' })

    const { customerId } = await customerOf(orderId)
    const choice = { purpose: 'deferred', channel: 'email', allowed: true }
    await desk.put(`/api/customers/${customerId}/message-choices`, choice).expect(204)
    // 7:30 at the place. The vehicle is still here: it waits for another day.
    await becomes('2026-02-12T12:30:00.000Z')
    await deliver()
    expect(await newest(orderId)).toMatchObject({ state: 'waiting', dueAt: '2026-02-13T12:30:00.000Z' })
    const words = sideOf('Comes again in February.')
    const withdrawn = { reason: 'customer', words: words.digest } as const
    expect(await writerOn(shop, orderId)(desk, 'order.withdrawn', withdrawn, [words])).toMatchObject({
      result: 'accepted',
    })
    await becomes('2026-02-13T12:30:00.000Z')
    await deliver()
    expect(await newest(orderId)).toMatchObject({ state: 'waiting', nextTryAt: '2026-02-13T13:00:00.000Z' })
    expect(mail.arrived).toHaveLength(before)
    await becomes('2026-02-13T13:00:00.000Z')
    await deliver()
    expect(mail.arrived).toHaveLength(before + 1)
    const letter = mail.arrived.at(-1)
    expect(letter?.header('subject')).toMatch(/^Your .*: the work that you put off/)
    expect(letter?.text).toMatch(/new sensor, right rear/i)
    expect(letter?.text).toContain('Prices may have changed since.')
    expect(await newest(orderId)).toMatchObject({ state: 'handed-over' })
  })
})
