import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const once = () => ({ 'idempotency-key': randomUUID() })
const version = (number: number) => ({ 'if-match': `"${number}"` })
const fieldsOf = ({ body }: { body: { fields: { field: string }[] } }) =>
  body.fields.map(({ field }) => field)
const home = async () => (await owner.get(`/api/places/${shop.demo.home.id}`).expect(200)).body
const added = async (change: object) => {
  const { record } = await home()
  return owner.post('/api/places', { content: { ...record.content, ...change } }, once())
}

describe('the places of a shop', () => {
  it('are read and edited by the owner only', async () => {
    const advisor = await shop.desk('ottoline')
    expect((await advisor.get('/api/places').expect(403)).body.code).toBe('ACCESS_REFUSED')
    const { body } = await owner.get('/api/places').expect(200)
    expect(body.records.map(({ content }: { content: { name: string } }) => content.name)).toEqual([
      'Millrace Road',
      'Tamber Street',
    ])
  })

  it('keep who changed what, what was there before the history, and can be written back', async () => {
    const { record, history } = await home()
    expect(history).toEqual([])
    const path = `/api/places/${record.id}`
    const raised = { ...record.content, altitudeFeet: 830 }
    const saved = await owner.put(path, { content: raised }, version(1)).expect(200)
    expect(saved.headers.etag).toBe('"2"')
    const again = await owner.put(path, { content: record.content }, version(2)).expect(200)
    expect(again.body.version).toBe(3)
    const after = await home()
    expect(after.record.content).toEqual(record.content)
    expect(
      after.history.map(({ version: of, by, content }: Record<string, unknown>) => [
        of,
        by,
        (content as { altitudeFeet: number }).altitudeFeet,
      ]),
    ).toEqual([
      [3, 'Marguerite Ashby-Bell', 820],
      [2, 'Marguerite Ashby-Bell', 830],
      [1, null, 820],
    ])
  })

  it('stay the version that they are when nothing is changed', async () => {
    const { record, history } = await home()
    const saved = await owner
      .put(`/api/places/${record.id}`, { content: record.content }, version(record.version))
      .expect(200)
    expect(saved.body.version).toBe(record.version)
    expect((await home()).history).toHaveLength(history.length)
  })

  it('hand back both versions when two owners edit one at once', async () => {
    const { record } = await home()
    const path = `/api/places/${record.id}`
    const replies = await Promise.all(
      [7, 8].map((bays) =>
        owner.put(path, { content: { ...record.content, bays } }, version(record.version)),
      ),
    )
    const [lost] = replies.filter(({ status }) => status === 412)
    const [won] = replies.filter(({ status }) => status === 200)
    expect(lost?.body.code).toBe('VERSION_STALE')
    expect(lost?.body.current).toEqual({
      id: record.id,
      version: won?.body.version,
      content: won?.body.content,
    })
    expect(lost?.body.sent.bays).not.toBe(won?.body.content.bays)
  })

  it('are added once for a key', async () => {
    const { record } = await home()
    const key = once()
    const body = { content: { ...record.content, name: 'Quarry Lane' } }
    const first = await owner.post('/api/places', body, key).expect(201)
    const second = await owner.post('/api/places', body, key).expect(201)
    expect(second.body).toEqual(first.body)
    const { body: read } = await owner.get(`/api/places/${first.body.id}`).expect(200)
    expect(read.history).toHaveLength(1)
  })

  it('name every field that cannot be', async () => {
    const reply = await added({
      name: ' ',
      bays: -1,
      altitudeFeet: -2_000,
      timeZone: 'Mars/Olympus',
      hours: [{ opens: '17:00', closes: '08:00' }, null, null, null, null, null, null],
    })
    expect(reply.status).toBe(422)
    expect(fieldsOf(reply).toSorted()).toEqual([
      'content.altitudeFeet',
      'content.bays',
      'content.hours.0',
      'content.name',
      'content.timeZone',
    ])
  })

  it('have a name each', async () => {
    const reply = await added({ name: 'millrace road' })
    expect(reply.status).toBe(422)
    expect(fieldsOf(reply)).toEqual(['content.name'])
  })

  it('ask about an altitude that is hardly one, and take it when it is said to be right', async () => {
    const asked = await added({ name: 'Summit Road', altitudeFeet: 14_000 })
    expect(asked.body).toMatchObject({ code: 'VALUE_DOUBTFUL', fields: [{ field: 'altitudeFeet' }] })
    const { record } = await home()
    const content = { ...record.content, name: 'Summit Road', altitudeFeet: 14_000 }
    await owner.post('/api/places', { content, sure: ['altitudeFeet'] }, once()).expect(201)
  })

  it('work at once in what appending needs: a place whose second person is waived raises the facts', async () => {
    const { record } = await home()
    const before = await shop.parts.prisma.shop.findUniqueOrThrow({ where: { id: shop.demo.shop.id } })
    const lawProfile = { ...record.content.lawProfile, secondPersonForTorque: false }
    await owner
      .put(
        `/api/places/${record.id}`,
        { content: { ...record.content, lawProfile } },
        version(record.version),
      )
      .expect(200)
    const after = await shop.parts.prisma.shop.findUniqueOrThrow({ where: { id: shop.demo.shop.id } })
    expect(after.factsVersion).toBeGreaterThan(before.factsVersion)
  })
})
