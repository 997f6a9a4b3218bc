import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { writerOn } from '../support/write-entry.ts'

/** Odometers over HTTP: what a vehicle may come and leave with, compared with this visit and with earlier ones. */
let shop: TestApp
let replay: Replay
let desk: Caller
const signIn = async () => {
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
}
beforeAll(async () => {
  shop = await startTestApp()
  await signIn()
})
afterAll(() => shop.stop())

const mi = (value: number) => ({ value, unit: 'mi' as const })

/** The first line of T-2602, whose vehicle comes with this odometer. */
const opening = (miles: number, odometerConfirmed: boolean): { orderId: string; line: DemoLine } => {
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  const line = lines.find(({ draft }) => draft.kind === 'order.opened')
  if (line?.draft.kind !== 'order.opened') throw new Error('T-2602 was never opened')
  const payload = { ...line.draft.payload, odometer: mi(miles), odometerConfirmed }
  return { orderId, line: { ...line, draft: { ...line.draft, payload } } }
}

describe('a vehicle that leaves', () => {
  it('is checked at the hand-back against the end of our own drive', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2601')
    await replay.sendUntil(lines)
    await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
    const write = writerOn(shop, orderId)
    const handBack = (miles: number, odometerConfirmed: boolean) =>
      write(desk, 'order.handed_back', {
        odometer: mi(miles),
        odometerConfirmed,
        lockingKeyReturned: null,
        retorqueAdvised: true,
        signature: null,
        releaseAgreedBy: null,
      })
    expect(await handBack(52_613, true)).toMatchObject({ values: { why: 'backwards', before: mi(52_625) } })
    expect(await handBack(53_000, false)).toMatchObject({ values: { why: 'unlikely' } })
    expect(await handBack(52_625, false)).toMatchObject({ result: 'accepted' })
  }, 60_000)
})

describe('a vehicle that comes', () => {
  it('with nothing but nines is refused at six of them, and read twice at five', async () => {
    expect(await replay.send(opening(999_999, true).line)).toMatchObject({
      code: 'ODOMETER_IMPLAUSIBLE',
      values: { why: 'impossible' },
    })
    expect(await replay.send(opening(99_999, false).line)).toMatchObject({ values: { why: 'nines' } })
  })

  it('for the first time with more than nearly any vehicle reads is read twice', async () => {
    const { orderId, line } = opening(640_000, false)
    expect(await replay.send(line)).toMatchObject({ values: { why: 'unlikely', before: null } })
    const confirmed = opening(640_000, true)
    expect(await replay.send(confirmed.line)).toMatchObject({ result: 'accepted' })
    const { body } = await desk.get(`/api/orders/${confirmed.orderId}`).expect(200)
    expect(body.entries[0].payload).toMatchObject({ odometer: mi(640_000), odometerConfirmed: true })
    await desk.get(`/api/orders/${orderId}`).expect(404)
  })

  it('again is compared with the newest reading of an earlier visit, whoever asks first', async () => {
    const first = opening(94_318, true)
    expect(await replay.send(first.line)).toMatchObject({ result: 'accepted' })
    const write = writerOn(shop, first.orderId)
    const leaving = { when: 'leaving', odometer: mi(94_330), confirmed: false } as const
    expect(await write(desk, 'odometer.read', leaving)).toMatchObject({ result: 'accepted' })
    const { body: opened } = await desk.get(`/api/orders/${first.orderId}`).expect(200)
    const { body } = await desk.get(`/api/vehicles/${opened.vehicle.vehicleId}/last-odometer`).expect(200)
    expect(body.last).toMatchObject({ distance: mi(94_330) })

    shop.clock.advance(30 * 86_400_000)
    await signIn()
    expect(await replay.send(opening(94_329, false).line)).toMatchObject({
      values: { why: 'lower', before: mi(94_330) },
      words: expect.stringMatching(/read 94,330 mi at a visit 3\d days ago, and 94,329 mi is less/),
    })
    expect(await replay.send(opening(140_000, false).line)).toMatchObject({
      values: { why: 'unlikely', before: mi(94_330) },
    })
    const second = opening(95_100, false)
    expect(await replay.send(second.line)).toMatchObject({ result: 'accepted' })
    const { body: order } = await desk.get(`/api/orders/${second.orderId}`).expect(200)
    expect(order.earlierOdometer).toMatchObject({ distance: mi(94_330) })
    expect(await replay.send(opening(12, true).line)).toMatchObject({ result: 'accepted' })
  })
})

describe('within a visit', () => {
  it('less than the vehicle came with is refused at the desk, whoever confirms it', async () => {
    const { orderId, line } = opening(96_000, true)
    await replay.send(line)
    const write = writerOn(shop, orderId)
    const refused = await write(desk, 'odometer.read', {
      ...{ when: 'leaving', odometer: mi(95_999), confirmed: true },
    })
    expect(refused).toMatchObject({
      ...{ code: 'ODOMETER_IMPLAUSIBLE', values: { why: 'backwards', before: mi(96_000) }, kept: true },
    })
    // What was typed is kept among what was not accepted, and the order reads what it read.
    const { body: tray } = await desk.get('/api/refused-entries').expect(200)
    expect(JSON.stringify(tray)).toContain(refused.id)
    const { body: order } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(order.entries.map(({ kind }: { kind: string }) => kind)).toEqual(['order.opened'])
  })

  it('is written again as it came, by the desk and by the bay, and judged by earlier visits again', async () => {
    const { orderId, line } = opening(96_000, true)
    await replay.send(line)
    const write = writerOn(shop, orderId)
    const came = (miles: number, confirmed: boolean) =>
      ({ when: 'arrival', odometer: mi(miles), confirmed }) as const
    expect(await write(desk, 'odometer.read', came(95_000, false))).toMatchObject({
      values: { why: 'lower', before: mi(96_000) },
    })
    const bay = await replay.as('bo', 'bay')
    expect(await write(bay, 'odometer.read', came(96_040, false))).toMatchObject({ result: 'accepted' })
    expect(await write(desk, 'odometer.read', came(95_000, true))).toMatchObject({ result: 'accepted' })
  })
})

describe('an entry of the version before a reading could be confirmed', () => {
  it('is judged as one that nobody confirmed', async () => {
    const { line } = opening(640_000, false)
    if (line.draft.kind !== 'order.opened') throw new Error('no opening')
    const { odometerConfirmed, ...payload } = line.draft.payload
    expect(odometerConfirmed).toBe(false)
    const first = { ...line, draft: { ...line.draft, version: 1, payload } } as unknown as DemoLine
    expect(await replay.send(first)).toMatchObject({ code: 'ODOMETER_IMPLAUSIBLE' })
  })
})
