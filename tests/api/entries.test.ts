import { randomUUID } from 'node:crypto'
import { fold } from '@bayledger/ledger/fold'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
})
afterAll(() => shop.stop())

const freshLines = (number: string) => freshCopy(shop.demo, number)
const kindIs = (kind: string) => (line: DemoLine) => line.draft.kind === kind
const lineOf = (lines: readonly DemoLine[], kind: string): DemoLine => {
  const line = lines.find(kindIs(kind))
  if (!line) throw new Error(`no ${kind} here`)
  return line
}
const changed = (line: DemoLine, change: (payload: Record<string, unknown>) => object): DemoLine =>
  ({
    ...line,
    draft: {
      ...line.draft,
      id: randomUUID(),
      payload: change(line.draft.payload as Record<string, unknown>),
    },
  }) as DemoLine

describe('appending', () => {
  it('numbers entries from one on without gaps, in a chain that verifies', async () => {
    const { orderId, lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('estimate.decided'))
    const desk = await replay.as('ottoline', 'desk')
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(body.entries.map(({ seq }: { seq: number }) => seq)).toEqual(
      body.entries.map((_: unknown, index: number) => index + 1),
    )
    expect(verifyChain(body.entries)).toEqual({ whole: true })
    expect(body.head).toEqual({ seq: body.entries.length, hash: body.entries.at(-1).hash })
    expect(body.number).toMatch(/^T-26\d\d$/)
    expect(nextMoves(fold(body.entries), shop.clock.now().toISOString())[0]?.mover).toBe('customer')
  })

  it('gives each new order the next number, also when ten are opened at once', async () => {
    const orders = Array.from({ length: 10 }, () => freshLines('T-2602'))
    const desk = await replay.as('ottoline', 'desk')
    const replies = await Promise.all(
      orders.map(({ lines }) =>
        desk.post('/api/entries', { entries: [envelopeOf(lineOf(lines, 'order.opened').draft)], sides: [] }),
      ),
    )
    const numbers = replies.map(({ body }) => Number(body.results[0].given.orderNumber.slice(2))).toSorted()
    expect(new Set(numbers).size).toBe(10)
    expect((numbers.at(-1) ?? 0) - (numbers[0] ?? 0)).toBe(9)
  })

  it('answers a repeat with what was written the first time', async () => {
    const { lines } = freshLines('T-2602')
    const opened = lineOf(lines, 'order.opened')
    const first = await replay.send(opened)
    const second = await replay.send(opened)
    expect(first.result).toBe('accepted')
    expect(second).toEqual({ ...first, result: 'known' })
  })

  it('writes twenty copies that come at once a single time', async () => {
    const { orderId, lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('complaint.recorded'))
    const line = lineOf(lines, 'complaint.recorded')
    const desk = await replay.as('ottoline', 'desk')
    const replies = await Promise.all(
      Array.from({ length: 20 }, () =>
        desk.post('/api/entries', { entries: [envelopeOf(line.draft)], sides: line.sides }).expect(200),
      ),
    )
    const results = replies.map(({ body }) => body.results[0].result)
    expect(results.filter((result) => result === 'accepted')).toHaveLength(1)
    expect(results.filter((result) => result === 'known')).toHaveLength(19)
    const { rows } = await shop.deps.pool.query(
      'select count(*)::int as n from entries where order_id = $1 and id = $2',
      [orderId, line.draft.id],
    )
    expect(rows[0].n).toBe(1)
  })

  it('takes twenty different entries at once, each with a number of its own', async () => {
    const { orderId, lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('wheel.checked'))
    const desk = await replay.as('ottoline', 'desk')
    const note = lineOf(lines, 'complaint.recorded')
    const replies = await Promise.all(
      Array.from({ length: 20 }, () =>
        desk
          .post('/api/entries', {
            entries: [
              {
                ...envelopeOf(note.draft),
                id: randomUUID(),
                kind: 'note.added',
                payload: { words: note.sides[0]?.digest },
              },
            ],
            sides: note.sides,
          })
          .expect(200),
      ),
    )
    expect(replies.map(({ body }) => body.results[0].result)).toEqual(Array(20).fill('accepted'))
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(verifyChain(body.entries)).toEqual({ whole: true })
  })

  it('refuses other content under an id that is taken, in this order or in another', async () => {
    const { lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('sheet.chosen'))
    const complaint = lineOf(lines, 'complaint.recorded')
    const other = {
      ...complaint,
      draft: { ...complaint.draft, writtenAt: '2026-01-12T14:00:00.000Z' },
    } as DemoLine
    expect(await replay.send(other)).toMatchObject({
      result: 'refused',
      code: 'ENTRY_ID_REUSED',
      kept: false,
    })

    const elsewhere = freshLines('T-2602')
    await replay.sendUntil(elsewhere.lines, kindIs('complaint.recorded'))
    const stolen = { ...complaint, draft: { ...complaint.draft, orderId: elsewhere.orderId } } as DemoLine
    expect(await replay.send(stolen)).toMatchObject({ result: 'refused', code: 'ENTRY_ID_REUSED' })
  })

  it('takes a batch in its order, and an entry after a refused one all the same', async () => {
    const { lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('complaint.recorded'))
    const desk = await replay.as('ottoline', 'desk')
    const complaint = lineOf(lines, 'complaint.recorded')
    const strikeOfNothing = {
      ...envelopeOf(complaint.draft),
      id: randomUUID(),
      kind: 'entry.struck',
      payload: { entryId: randomUUID(), reason: 'other', words: null, secondPersonId: null },
    }
    const resting = { ...envelopeOf(complaint.draft), id: randomUUID(), restsOn: [strikeOfNothing.id] }
    const { body } = await desk
      .post('/api/entries', {
        entries: [strikeOfNothing, resting, envelopeOf(complaint.draft)],
        sides: complaint.sides,
      })
      .expect(200)
    expect(body.results.map(({ result, code }: { result: string; code?: string }) => code ?? result)).toEqual(
      ['STRIKE_TARGET_UNKNOWN', 'ENTRY_RESTS_ON_REFUSED', 'accepted'],
    )
  })

  it('answers "not yet" to what a newer device wrote', async () => {
    const { lines } = freshLines('T-2602')
    const opened = lineOf(lines, 'order.opened')
    const desk = await replay.as('ottoline', 'desk')
    const { body } = await desk
      .post('/api/entries', {
        entries: [
          { ...envelopeOf(opened.draft), version: 99 },
          { ...envelopeOf(opened.draft), id: randomUUID(), orderId: randomUUID(), kind: 'wheel.danced' },
        ],
        sides: [],
      })
      .expect(200)
    expect(body.results.map(({ result }: { result: string }) => result)).toEqual(['not-yet', 'not-yet'])
  })
})

describe('personal words', () => {
  it('are kept apart, under a digest that their salt makes', async () => {
    const { orderId, lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('sheet.chosen'))
    const [{ digest, text } = { digest: '', text: '' }] = lineOf(lines, 'complaint.recorded').sides
    const { rows } = await shop.deps.pool.query(
      'select payload::text as payload from entries where order_id = $1',
      [orderId],
    )
    for (const { payload } of rows) expect(payload).not.toContain(text)
    const desk = await replay.as('ottoline', 'desk')
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(body.sides).toContainEqual({ side: 'personal', digest, text })
  })

  it('that were changed on their way are refused, with the whole batch', async () => {
    const { lines } = freshLines('T-2602')
    const line = lineOf(lines, 'complaint.recorded')
    const desk = await replay.as('ottoline', 'desk')
    const sides = line.sides.map((words) => ({ ...words, text: `${words.text} not` }))
    const { body } = await desk.post('/api/entries', { entries: [envelopeOf(line.draft)], sides }).expect(422)
    expect(body.fields[0].field).toBe('sides.0.digest')
  })

  it('that did not arrive are requested, and the entry is not lost', async () => {
    const { lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('complaint.recorded'))
    const line = lineOf(lines, 'complaint.recorded')
    expect(await replay.send({ ...line, sides: [] } as DemoLine)).toMatchObject({
      code: 'SIDE_MISSING',
      kept: false,
    })
    expect((await replay.send(line)).result).toBe('accepted')
  })
})

describe('what cannot be right', () => {
  let lines: readonly DemoLine[]
  beforeEach(async () => {
    lines = freshLines('T-2603').lines
  })

  it('a gauge of 350 psi is refused with words that say what to do', async () => {
    await replay.sendUntil(lines, kindIs('wheel.checked'))
    const line = lines.find(({ draft }) => draft.kind === 'wheel.checked' && draft.payload.gauge !== null)
    if (!line) throw new Error('no gauge here')
    const result = await replay.send(
      changed(line, (payload) => ({
        ...payload,
        gauge: { ...(payload.gauge as object), pressure: { value: 350, unit: 'psi' } },
      })),
    )
    expect(result).toMatchObject({ result: 'refused', code: 'READING_IMPOSSIBLE', kept: true })
    expect('words' in result && result.words).toMatch(/Read the .* tire again/)
  })

  it('a unit that does not exist and a field that is unknown are named', async () => {
    await replay.sendUntil(lines, kindIs('wheel.checked'))
    const line = lines.find(({ draft }) => draft.kind === 'wheel.checked' && draft.payload.gauge !== null)
    if (!line) throw new Error('no gauge here')
    const result = await replay.send(
      changed(line, (payload) => ({
        ...payload,
        guage: 1,
        gauge: { ...(payload.gauge as object), pressure: { value: 35, unit: 'PSI' } },
      })),
    )
    expect(result).toMatchObject({ result: 'refused', code: 'ENTRY_INVALID', kept: true })
    const fields = 'fields' in result ? result.fields.map(({ field }) => field) : []
    expect(fields).toEqual(expect.arrayContaining(['payload.gauge.pressure.unit', 'payload.guage']))
  })

  it('an envelope that is no envelope is refused before anything is written', async () => {
    const desk = await replay.as('ottoline', 'desk')
    const opened = envelopeOf(lineOf(lines, 'order.opened').draft)
    const { body } = await desk
      .post('/api/entries', { entries: [{ ...opened, id: 'first', seq: 1 }], sides: [] })
      .expect(422)
    expect(body.fields.map(({ field }: { field: string }) => field).toSorted()).toEqual([
      'entries.0.id',
      'entries.0.seq',
    ])
  })

  it('an order for a customer who is not there is refused', async () => {
    const opened = changed(lineOf(lines, 'order.opened'), (payload) => ({
      ...payload,
      customerId: randomUUID(),
    }))
    expect(await replay.send(opened)).toMatchObject({ code: 'ORDER_PARTS_UNKNOWN' })
  })

  it('what is written at the desk is refused from a tablet', async () => {
    const bay = await replay.as('greta', 'bay')
    const opened = envelopeOf(lineOf(lines, 'order.opened').draft)
    const { body } = await bay.post('/api/entries', { entries: [opened], sides: [] }).expect(200)
    expect(body.results[0]).toMatchObject({ result: 'refused', code: 'ENTRY_KIND_NOT_ALLOWED' })
  })

  it('a report or a job plan cannot be written by hand', async () => {
    await replay.sendUntil(lines, kindIs('complaint.recorded'))
    const desk = await replay.as('ottoline', 'desk')
    const { draft } = lineOf(lines, 'complaint.recorded')
    const plan = {
      ...envelopeOf(draft),
      id: randomUUID(),
      kind: 'plan.issued',
      payload: { plan: { planVersion: 1, steps: [] }, decisionId: null },
    }
    const { body } = await desk.post('/api/entries', { entries: [plan], sides: [] }).expect(200)
    expect(body.results[0]).toMatchObject({ result: 'refused', code: 'PLAN_NOT_BY_SYSTEM' })
  })
})

describe('the tray of refused entries', () => {
  it('keeps the code and the values of a refusal and makes its words when it is read', async () => {
    const { lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('wheel.checked'))
    const line = lines.find(({ draft }) => draft.kind === 'wheel.checked' && draft.payload.gauge !== null)
    if (!line) throw new Error('no gauge here')
    const wrong = changed(line, (payload) => ({
      ...payload,
      wheel: 'RF',
      gauge: { ...(payload.gauge as object), pressure: { value: 350, unit: 'psi' } },
    }))
    await replay.send(wrong)
    const { body } = await (await replay.as('ottoline', 'desk')).get('/api/refused-entries').expect(200)
    expect(body.refused.find(({ id }: { id: string }) => id === wrong.draft.id)).toMatchObject({
      code: 'READING_IMPOSSIBLE',
      values: { wheel: 'RF', found: { value: 350, unit: 'psi' }, lowestPsi: -20, highestPsi: 150 },
      words: expect.stringContaining('Read the right front tire again'),
    })
  })

  it('shows the desk all of them and a tablet its own, until they are settled', async () => {
    const { lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('wheel.checked'))
    const line = lines.find(({ draft }) => draft.kind === 'wheel.checked' && draft.payload.gauge !== null)
    if (!line) throw new Error('no gauge here')
    const wrong = changed(line, (payload) => ({
      ...payload,
      gauge: { ...(payload.gauge as object), pressure: { value: 350, unit: 'psi' } },
    }))
    const refused = await replay.send(wrong)
    // A refusal is final for its id: sent again, it reads the same.
    expect(await replay.send(wrong)).toEqual(refused)
    const desk = await replay.as('ottoline', 'desk')
    const idsFor = async (caller: typeof desk) =>
      (await caller.get('/api/refused-entries').expect(200)).body.refused.map(({ id }: { id: string }) => id)
    expect(await idsFor(desk)).toContain(wrong.draft.id)
    expect(await idsFor(await replay.as('greta', 'bay'))).not.toContain(wrong.draft.id)
    await desk.post(`/api/refused-entries/${wrong.draft.id}/settle`).expect(204)
    expect(await idsFor(desk)).not.toContain(wrong.draft.id)
    const { body } = await desk.post(`/api/refused-entries/${randomUUID()}/settle`).expect(404)
    expect(body.code).toBe('REFUSED_ENTRY_NOT_FOUND')
    // Settled, it is still on record; another technician is not told that there is one.
    const one = await desk.get(`/api/refused-entries/${wrong.draft.id}`).expect(200)
    expect(one.body.body.payload).toEqual(wrong.draft.payload)
    await (await replay.as('greta', 'bay')).get(`/api/refused-entries/${wrong.draft.id}`).expect(404)
  })

  it('lists the oldest of them, without bodies that are too long for a list, and says that there are more', async () => {
    const { orderId } = freshLines('T-2602')
    const desk = await replay.as('ottoline', 'desk')
    const draftWith = (words: string) => ({
      ...{ id: randomUUID(), orderId, kind: 'note.added', version: 1, restsOn: [] },
      ...{ payload: { words }, writtenAt: '2026-01-12T16:40:00.000Z' },
    })
    const long = Array.from({ length: 3 }, () => draftWith('x'.repeat(1_000_000)))
    await desk.post('/api/entries', { entries: long, sides: [] }).expect(200)
    const first = await desk.get('/api/refused-entries').expect(200)
    expect(first.text.length).toBeLessThan(1_000_000)
    expect(first.body.isWhole).toBe(true)
    const listed = first.body.refused.filter(({ orderId: of }: { orderId: string }) => of === orderId)
    expect(listed).toHaveLength(3)
    for (const { body, bodyBytes } of listed) {
      expect(body).toBeNull()
      expect(bodyBytes).toBeGreaterThan(1_000_000)
    }
    // Nothing is lost by it.
    const one = await desk.get(`/api/refused-entries/${long[0]?.id}`).expect(200)
    expect(one.body.body).toEqual(long[0])

    for (let request = 0; request < 2; request += 1) {
      const entries = Array.from({ length: 100 }, () => draftWith('no digest'))
      await desk.post('/api/entries', { entries, sides: [] }).expect(200)
    }
    const more = await desk.get('/api/refused-entries').expect(200)
    expect([more.body.refused.length, more.body.isWhole]).toEqual([200, false])
    expect(more.text.length).toBeLessThan(1_000_000)
  })
})

describe('what follows from entries', () => {
  it('a job plan is written by the server with the decision it follows', async () => {
    const { orderId, lines } = freshLines('T-2603')
    await replay.sendUntil(lines, kindIs('part.drawn'))
    const desk = await replay.as('ottoline', 'desk')
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const decided = body.entries.findIndex(({ kind }: { kind: string }) => kind === 'estimate.decided')
    expect(body.entries[decided + 1]).toMatchObject({
      kind: 'plan.issued',
      writtenBy: { kind: 'system' },
      payload: { decisionId: body.entries[decided].id },
    })
  })

  it('entries after a number are what a client is missing', async () => {
    const { orderId, lines } = freshLines('T-2602')
    await replay.sendUntil(lines, kindIs('wheel.checked'))
    const desk = await replay.as('ottoline', 'desk')
    const whole = (await desk.get(`/api/orders/${orderId}`).expect(200)).body
    const rest = (await desk.get(`/api/orders/${orderId}/entries?after=2`).expect(200)).body
    expect(rest.entries).toEqual(whole.entries.slice(2))
    expect((await desk.get(`/api/orders/${randomUUID()}`).expect(404)).body.code).toBe('ORDER_NOT_FOUND')
    expect((await desk.get(`/api/orders/${orderId}/entries?after=-1`).expect(422)).body.fields[0].field).toBe(
      'after',
    )
  })
})
