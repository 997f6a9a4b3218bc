import { randomBytes, randomUUID } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/digests'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { readBack } from '../support/read-back.ts'
import { envelopeOf, type Replay, replayOn } from '../support/replay-order.ts'

/** Whatever the service accepted verifies when a process reads it that has never seen it. */
let shop: TestApp
let replay: Replay
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
})
afterAll(() => shop.stop())

const expectWhole = async () => {
  const { entries, broken } = await readBack(shop.url, shop.demo.shop.id)
  expect(broken).toEqual([])
  return entries
}

/** Ids of the ledger. What a sheet says of itself is words, and an order uses it as it is on file. */
const uuids = /(?<!"(?:sheetId|enteredBy|verifiedBy)":)"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}"/g
const upper = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value).replace(uuids, (id) => id.toUpperCase())) as T
const inUpperCase = (line: DemoLine): DemoLine => {
  const { id, orderId, payload, restsOn } = line.draft
  return {
    ...line,
    draft: { ...line.draft, ...upper({ id, orderId, payload, restsOn }) } as DemoLine['draft'],
  }
}

/** The same words with other bytes: composed, decomposed, or with more than a keyboard has. */
const sayings = [
  'Jose\u0301 Ñandu\u0301',
  'José Ñandú'.normalize('NFC'),
  'Zoe\u0308 🔧',
  '\u1e9b\u0323',
  'ﬁn',
]
const saidOtherwise = (line: DemoLine, saying: string): DemoLine => {
  const salt = randomBytes(32)
  const renamed = sideDigest(saying, salt)
  let draft = JSON.stringify(line.draft)
  const personal = new Set(
    sidesNamedIn(line.draft).flatMap(({ side, digest }) => (side === 'personal' ? [digest] : [])),
  )
  for (const digest of personal) draft = draft.replaceAll(digest, renamed)
  const sides = [
    ...line.sides.filter(({ digest }) => !personal.has(digest)),
    { digest: renamed, salt: salt.toString('base64'), text: saying },
  ]
  return { ...line, draft: JSON.parse(draft) as DemoLine['draft'], sides: line.sides.length > 0 ? sides : [] }
}

const limits = [-0, 0, 5e-324, 1e-7, 0.1 + 0.2, 99.999_999_999_999_99, 999, 1e21, -1, 2 ** 53, 1e308, 2 ** 31]
/** The same payload with one of its numbers at a limit; `null` where it has none. */
const withNumber = (payload: unknown, at: number, limit: number): object | null => {
  const places: [Record<string, unknown>, string][] = []
  const copy = structuredClone(payload) as Record<string, unknown>
  const visit = (node: Record<string, unknown>): void => {
    for (const [key, value] of Object.entries(node))
      if (typeof value === 'number') places.push([node, key])
      else if (value !== null && typeof value === 'object') visit(value as Record<string, unknown>)
  }
  visit(copy)
  const place = places[at % Math.max(1, places.length)]
  if (!place) return null
  place[0][place[1]] = limit
  return copy
}

describe('an id in upper case', () => {
  it('is taken in every entry that people write, and sent again in lower case it is the same one', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2601')
    await replay.sendUntil(lines.map(inUpperCase))
    const opened = lines[0]
    if (!opened) throw new Error('the order has no first line')
    expect(await replay.send(opened)).toMatchObject({ result: 'known', id: opened.draft.id, seq: 1 })
    const entries = await expectWhole()
    const mine = entries.filter((entry) => entry.orderId === orderId)
    const written = lines.filter(({ draft }) => draft.writtenBy.kind === 'staff')
    expect(mine.filter(({ writtenBy }) => writtenBy.kind === 'staff').map(({ id }) => id)).toEqual(
      written.map(({ draft }) => draft.id),
    )
    expect(JSON.stringify(mine)).not.toMatch(/"[0-9A-F-]*[A-F][0-9A-F-]{34,}"/)
  })

  it("is taken for a report and for its order, and the report's number is given once", async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2601')
    await replay.sendUntil(lines)
    const entryId = randomUUID()
    const loud = { entryId: entryId.toUpperCase() }
    const first = await desk.post(`/api/orders/${orderId.toUpperCase()}/reports`, loud).expect(201)
    const again = await desk.post(`/api/orders/${orderId}/reports`, { entryId }).expect(201)
    expect(again.body).toEqual(first.body)
    expect((await desk.get(`/api/orders/${orderId.toUpperCase()}`).expect(200)).body.orderId).toBe(orderId)
    expect((await expectWhole()).filter(({ id }) => id === entryId)).toHaveLength(1)
  })

  it("is taken in a customer's decision, which is entered once", async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(lines)
    const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const phone = shop.withCookies(cookiesIn(opened))
    const { estimate } = (await phone.get('/api/customer/order').expect(200)).body
    const decision = {
      entryId: randomUUID(),
      revision: estimate.revision,
      digest: estimate.digest,
      shown: estimate.shown,
      answers: estimate.bundles
        .filter(({ agreedBefore }: { agreedBefore: boolean }) => !agreedBefore)
        .map(({ bundleKey }: { bundleKey: string }) => ({
          bundleKey,
          answer: 'authorized',
          deferredUntil: null,
          cautionsShown: [],
        })),
      name: 'W. Du\u0308nmore-Gray',
      relation: 'owner',
      signature: { form: 'typed', text: 'W. Dünmore-Gray' },
      agreesToElectronicRecord: true,
      wantsRemovedParts: false,
    }
    const loud = { ...decision, entryId: decision.entryId.toUpperCase() }
    const first = await phone.post('/api/customer/decisions', loud).expect(201)
    expect((await phone.post('/api/customer/decisions', decision).expect(201)).body).toEqual(first.body)
    expect((await expectWhole()).filter(({ id }) => id === decision.entryId)).toHaveLength(1)
  })
})

describe('whatever was accepted', () => {
  const numbers = ['T-2601', 'T-2603', 'T-2604', 'T-2605', 'T-2607', 'T-2613', 'T-2614']

  it('verifies when it is read back: ids in either case, accents either way, numbers at their limits', async () => {
    const tries = fc.record({
      number: fc.constantFrom(...numbers),
      loud: fc.infiniteStream(fc.boolean()),
      saying: fc.infiniteStream(fc.constantFrom(...sayings)),
      limit: fc.infiniteStream(fc.tuple(fc.nat(40), fc.constantFrom(...limits))),
      year: fc.infiniteStream(fc.constantFrom('0001', '1970', '9999', '2026')),
    })
    await fc.assert(
      fc.asyncProperty(tries, async ({ number, loud, saying, limit, year }) => {
        const { lines } = freshCopy(shop.demo, number)
        let accepted = 0
        for (const line of lines) {
          if (line.draft.writtenBy.kind === 'system') continue
          const said = saidOtherwise(line, saying.next().value)
          const sent = loud.next().value ? inUpperCase(said) : said
          const [at, value] = limit.next().value
          const payload = withNumber(sent.draft.payload, at, value)
          const writtenAt = `${year.next().value}${sent.draft.writtenAt.slice(4)}`
          if (payload && line.draft.kind !== 'order.opened')
            await replay.send({
              ...sent,
              draft: { ...sent.draft, id: randomUUID(), payload, writtenAt } as DemoLine['draft'],
            })
          if ((await replay.send(sent)).result === 'accepted') accepted += 1
        }
        expect(accepted).toBeGreaterThan(18)
        await expectWhole()
      }),
      { seed: 20_260_112, numRuns: 8 },
    )
  }, 180_000)

  it('comes from a request without half characters, NUL and depth: such a one is refused, and named', async () => {
    const { lines } = freshCopy(shop.demo, 'T-2601')
    const complaint = lines.find(({ draft }) => draft.kind === 'complaint.recorded')
    if (!complaint) throw new Error('nobody complains')
    for (const text of ['a\0b', 'a\ud83d']) {
      const body = { entries: [envelopeOf(complaint.draft)], sides: [{ ...complaint.sides[0], text }] }
      const refused = (await desk.post('/api/entries', body).expect(422)).body
      expect(refused).toMatchObject({ code: 'FIELDS_INVALID', fields: [{ field: 'sides.0.text' }] })
      await desk.get(`/api/search?q=${encodeURIComponent(`x${text.replace('\ud83d', '\0')}`)}`).expect(422)
      await shop.nobody.post('/api/customer/session', { secret: text }).expect(422)
    }
    const deep = `{"secret":${'['.repeat(5_000)}${']'.repeat(5_000)}}`
    const { body } = await shop.nobody
      .call('post', '/api/customer/session', { 'content-type': 'application/json' })
      .send(deep)
      .expect(422)
    expect(body.fields[0].allowed).toBe('lists and objects up to 40 levels deep')
    await expectWhole()
  })
})
