import { randomUUID } from 'node:crypto'
import { contract } from '@bayledger/contract/contract'
import { addressOf, type Endpoint } from '@bayledger/contract/endpoint'
import type { Entry } from '@bayledger/ledger/entry'
import { kindNames, versionOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
let desk: Caller
let readers: Readonly<Record<string, Caller>>
let orderIds: string[]
let params: Record<string, string>
/** A record of each kind that a shop keeps, by the address of its list. */
let records: ReadonlyMap<string, string>
/** Whatever a tablet and a technician may not read, as a reply would hold it. */
let secrets: RegExp[]
/** What a tablet, which may be lost, does not get either. */
let marksOfVehicles: RegExp[]

/** Orders that were answered on the telephone and paid: each kind of side is in one of them. */
const numbers = ['T-2603', 'T-2605', 'T-2606'] as const

beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const copies = numbers.map((number) => freshCopy(shop.demo, number))
  for (const { lines } of copies) await replay.sendUntil(lines)
  orderIds = copies.map(({ orderId }) => orderId)
  marksOfVehicles = await markVehicles()
  readers = {
    'a tablet': await replay.as('greta', 'bay'),
    'a technician at the desk': await shop.desk('rufus'),
  }
  const { body: order } = await desk.get(`/api/orders/${orderIds[0]}`).expect(200)
  params = {
    orderId: orderIds[0] ?? '',
    customerId: order.customer.customerId,
    vehicleId: order.vehicle.vehicleId,
    sheetId: shop.demo.sheets[0]?.sheetId ?? '',
    number: `${numbers[0]}-R1`,
    linkId: randomUUID(),
    entryId: randomUUID(),
    digest: 'd'.repeat(64),
    piece: '0',
    transferId: randomUUID(),
    draftId: randomUUID(),
    watch: randomUUID(),
    messageId: randomUUID(),
    sessionId: randomUUID(),
    passkeyId: randomUUID(),
    mergeId: randomUUID(),
    holdId: randomUUID(),
    token: 'a'.repeat(32),
  }
  records = await recordsOf(await shop.desk('marguerite'))
  secrets = await secretsOf(desk)
})
afterAll(() => shop.stop())

/** Gives each order's vehicle notes and its customer an e-mail address that are nowhere else; gives what tells the vehicles apart. */
const markVehicles = async (): Promise<RegExp[]> => {
  const marks: RegExp[] = [/parks beside the zeppelin/]
  for (const [index, orderId] of orderIds.entries()) {
    const { customer, vehicle } = (await desk.get(`/api/orders/${orderId}`).expect(200)).body
    const { vehicleId, version, ...content } = vehicle
    const notes = { ...content, notes: 'parks beside the zeppelin' }
    await desk.put(`/api/vehicles/${vehicleId}`, notes, { 'if-match': `"${version}"` }).expect(200)
    const { customerId, version: of, ...card } = customer
    const reached = { ...card, email: `zeppelin${index}@example.com` }
    await desk.put(`/api/customers/${customerId}`, reached, { 'if-match': `"${of}"` }).expect(200)
    if (vehicle.vin) marks.push(new RegExp(vehicle.vin))
  }
  expect(marks.length).toBeGreaterThan(1)
  return marks
}

const secretsOf = async (reader: Caller): Promise<RegExp[]> => {
  const cents = new Set<number>()
  const texts = new Set<string>()
  for (const orderId of orderIds) {
    const { body } = await reader.get(`/api/orders/${orderId}`).expect(200)
    expect(body.withheld).toEqual([])
    for (const contact of [body.customer.phone, body.customer.email]) if (contact) texts.add(contact)
    for (const { side, text } of body.sides as { side: string; text: string }[]) {
      if (side === 'personal') continue
      for (const [, figure] of text.matchAll(/"\w+Cents":(\d+)/g)) cents.add(Number(figure))
      if (side === 'contact') texts.add(text)
    }
  }
  // Small sums are like any other small number of a reply; the larger ones are tested instead.
  const figures = [...cents].filter((figure) => figure > 2_000)
  expect(figures.length).toBeGreaterThan(5)
  expect(texts.size).toBeGreaterThan(1)
  return [
    ...figures.map((figure) => new RegExp(`[:\\[,]${figure}[,}\\]]`)),
    ...figures.map((figure) => new RegExp(`\\$?${(figure / 100).toFixed(2).replace('.', '\\.')}(?!\\d)`)),
    ...[...texts].map((text) => new RegExp(text.replace(/[.+()]/g, '\\$&'))),
    /"(lookFee|amount|unit|total|tax|beforeTax)Cents":-?\d/,
  ]
}

/** The first record of each list, as the shop's owner reads it. */
const recordsOf = async (owner: Caller): Promise<ReadonlyMap<string, string>> => {
  const found = new Map<string, string>()
  for (const list of new Set(answers.flatMap(({ path }) => listOf(path) ?? []))) {
    const { body } = await owner.get(list).expect(200)
    const id = body.records[0]?.id
    expect(id, list).toBeTypeOf('string')
    found.set(list, id)
  }
  return found
}
const listOf = (path: string): string | null => /^(.+)\/:id(\/|$)/.exec(path)?.[1] ?? null

/** A stream has no end to read to; what a wake-up holds is tested where it is made. */
const answers = (contract as readonly Endpoint[]).filter(
  ({ path, operationId }) => path !== '/api/live' && operationId !== 'signOut',
)

/** What any read may be asked with. */
const queries: readonly Readonly<Record<string, string>>[] = [
  {},
  { after: '0' },
  { q: '55' },
  { since: '2026-01-01' },
  { lot: '55' },
]

const call = async (reader: Caller, { method, path, query }: Endpoint, orderId: string): Promise<string> => {
  const filled = { ...params, id: records.get(listOf(path) ?? '') ?? '', orderId }
  const replies = []
  for (const asked of query === undefined
    ? [{}]
    : [...queries, { ...queries[2], customerId: params.customerId ?? '' }])
    replies.push(
      await reader.call(method.toLowerCase() as 'get', addressOf(path, filled, asked), {
        'idempotency-key': randomUUID(),
      }),
    )
  return replies.map(({ text, body }) => `${text ?? ''}${JSON.stringify(body)}`).join('\n')
}

describe.each(['a tablet', 'a technician at the desk'])('%s', (name) => {
  it('gets no price, no sum, no telephone number and no e-mail address from any route, and a tablet no VIN', async () => {
    const found: string[] = []
    const withheld = name === 'a tablet' ? [...secrets, ...marksOfVehicles] : secrets
    for (const endpoint of answers)
      for (const orderId of endpoint.path.includes(':orderId') ? orderIds : orderIds.slice(0, 1)) {
        const reply = await call(readers[name] as Caller, endpoint, orderId)
        for (const secret of withheld)
          if (secret.test(reply)) found.push(`${endpoint.method} ${endpoint.path}: ${secret.source}`)
      }
    expect(found).toEqual([])
  }, 120_000)

  it('is told which kinds of side are withheld, and reads the rest of the order', async () => {
    const { body } = await (readers[name] as Caller).get(`/api/orders/${orderIds[0]}`).expect(200)
    expect(body.withheld).toEqual(['contact', 'money', 'shown'])
    expect(body.sides.every(({ side }: { side: string }) => side === 'personal')).toBe(true)
    expect(body.entries.length).toBeGreaterThan(20)
    expect(body.customer).not.toHaveProperty('phone')
  })

  it('gets back no price in what it is told of an entry of any kind that it sends', async () => {
    const { body } = await desk.get(`/api/orders/${orderIds[1]}`).expect(200)
    const known = new Map((body.entries as Entry[]).map((entry) => [entry.kind, entry]))
    const entries = kindNames.map((kind) => ({
      id: randomUUID(),
      orderId: orderIds[1],
      kind,
      version: versionOf(kind),
      payload: known.get(kind)?.payload ?? {},
      writtenAt: shop.clock.now().toISOString(),
      restsOn: [],
    }))
    const reader = readers[name] as Caller
    const sent = await reader.post('/api/entries', { entries, sides: [] }).expect(200)
    const tray = await reader.get('/api/refused-entries').expect(200)
    for (const secret of secrets) {
      expect(secret.test(sent.text)).toBe(false)
      expect(secret.test(tray.text)).toBe(false)
    }
  })
})
