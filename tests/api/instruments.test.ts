import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { begunOrder } from '../support/begun-order.ts'
import { workBegunOrder } from '../support/work-begun-order.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const path = '/api/register/instruments'
const once = () => ({ 'idempotency-key': randomUUID() })
const version = (number: number) => ({ 'if-match': `"${number}"` })
const wrench = (change: object = {}) => ({
  kind: 'wrench',
  code: `W-${randomUUID().slice(0, 8)}`,
  locationId: shop.demo.home.id,
  quarantined: false,
  why: null,
  rangeLow: 30,
  rangeHigh: 250,
  rangeUnit: 'lbf·ft',
  accuracyPercent: 4,
  calibratedOn: '2026-01-05',
  dueOn: '2027-01-05',
  certificate: 'C-1188',
  ...change,
})
const gauge = (change: object = {}) => ({
  kind: 'gauge',
  code: `GA-${randomUUID().slice(0, 8)}`,
  locationId: shop.demo.home.id,
  quarantined: false,
  why: null,
  offsetPsi: 0.2,
  checkedOn: '2026-01-05',
  dueOn: null,
  ...change,
})
const add = (content: object, sure?: string[]) => owner.post(path, { content, sure }, once())
const codeOf = async (code: string) => {
  const { body } = await owner.get(path).expect(200)
  return body.records.find((one: { content: { code: string } }) => one.content.code === code)
}

describe('wrenches and gauges', () => {
  it('are those of the shop, a wrench with the clicks that the ledger counts', async () => {
    const { body } = await owner.get(path).expect(200)
    expect(
      body.records.map(({ content, facts }: { content: { code: string }; facts: { cycles: number } }) => [
        content.code,
        facts.cycles,
      ]),
    ).toEqual([
      ['GA-1', null],
      ['GA-4', null],
      ['W-03', 4_610],
      ['W-05', 2_030],
      ['W-07', 1_220],
    ])
    expect((await (await shop.desk('ottoline')).get(path).expect(403)).body.code).toBe('ACCESS_REFUSED')
  })

  it('name every figure that cannot be', async () => {
    const reply = await add(wrench({ rangeLow: -5, rangeHigh: 3_000, accuracyPercent: 0 })).expect(422)
    expect(reply.body.fields.map(({ field }: { field: string }) => field).toSorted()).toEqual([
      'content.accuracyPercent',
      'content.rangeHigh',
      'content.rangeLow',
    ])
    const turned = await add(wrench({ rangeLow: 250, rangeHigh: 30, dueOn: '2025-01-01' })).expect(422)
    expect(turned.body.fields).toMatchObject([
      { field: 'content.rangeHigh', allowed: 'more than where the scale begins' },
      { field: 'content.dueOn' },
    ])
  })

  it('take no code twice, no place of nobody, no calibration to come, and never change their kind', async () => {
    const reply = await add(
      wrench({ code: 'W-07', locationId: randomUUID(), calibratedOn: '2026-02-01' }),
    ).expect(422)
    expect(reply.body.fields.map(({ field }: { field: string }) => field)).toEqual([
      'content.code',
      'content.locationId',
      'content.calibratedOn',
    ])
    const known = await codeOf('GA-1')
    const changed = await owner
      .put(`${path}/${known.id}`, { content: wrench({ code: 'GA-1' }) }, version(known.version))
      .expect(422)
    expect(changed.body.fields[0].field).toBe('content.kind')
  })

  it('ask whether a scale in N·m was typed under lbf·ft, and take it when it is said to be right', async () => {
    const asked = await add(wrench({ rangeLow: 40, rangeHigh: 340 })).expect(422)
    expect(asked.body).toMatchObject({
      code: 'VALUE_DOUBTFUL',
      fields: [{ field: 'rangeUnit', found: '340 lbf·ft' }],
    })
    // 340 N·m are 250.8 lbf·ft: the foot-pound by NIST SP 811, appendix B.8.
    expect(asked.body.fields[0].allowed).toContain('340 N·m, which is 251 lbf·ft')
    await add(wrench({ rangeLow: 40, rangeHigh: 340, rangeUnit: 'N·m' })).expect(201)
    await add(wrench({ rangeLow: 40, rangeHigh: 340 }), ['rangeUnit']).expect(201)
  })

  it('ask about a calibration that ends today or is over, and about one that lasts longer than a year', async () => {
    for (const dueOn of ['2026-01-12', '2026-01-11', '2027-06-01']) {
      const { body } = await add(wrench({ dueOn })).expect(422)
      expect(body).toMatchObject({ code: 'VALUE_DOUBTFUL', fields: [{ field: 'dueOn', found: dueOn }] })
    }
    await add(wrench({ dueOn: '2026-01-12' }), ['dueOn']).expect(201)
  })

  it('ask about a gauge that is far off the master, unless it is set aside', async () => {
    expect((await add(gauge({ offsetPsi: -3.1 })).expect(422)).body.fields[0].field).toBe('offsetPsi')
    await add(gauge({ offsetPsi: -3.1, quarantined: true, why: 'Under the master since today.' })).expect(201)
  })

  it('hand back both versions when two owners edit one', async () => {
    const made = (await add(wrench()).expect(201)).body
    const mine = { ...made.content, certificate: 'C-2000' }
    const theirs = { ...made.content, certificate: 'C-3000' }
    await owner.put(`${path}/${made.id}`, { content: theirs }, version(1)).expect(200)
    const lost = await owner.put(`${path}/${made.id}`, { content: mine }, version(1)).expect(412)
    expect(lost.body.current).toEqual({ id: made.id, version: 2, content: theirs })
    expect(lost.body.sent).toEqual(mine)
    const { body } = await owner.get(`${path}/${made.id}`).expect(200)
    expect(body.history.map(({ content }: { content: object }) => content)).toEqual([theirs, made.content])
  })
})

describe('a wrench that was used', () => {
  let wheels: Record<string, unknown>[]
  let used: { id: string; version: number; content: Record<string, unknown>; facts: { cycles: number } }
  const since = async (day: string) =>
    (await owner.get(`${path}/${used.id}/torqued-wheels?since=${day}`).expect(200)).body.wheels

  beforeAll(async () => {
    const order = await begunOrder(shop, 'T-2603')
    await workBegunOrder(shop, order, await order.as('ines', 'bay'), ({ stepKey }) =>
      stepKey.endsWith('second-check'),
    )
    used = await codeOf('W-07')
    wheels = await since('2026-01-01')
  })

  it('lists every wheel torqued with it since a day, with the order and whether its owner may be called', async () => {
    expect(
      wheels.map(({ orderId, ...wheel }) => ({ ...wheel, hasOrder: typeof orderId === 'string' })),
    ).toEqual(
      ['LF', 'RR'].map((wheel) => ({
        wheel,
        orderNumber: 'T-2621',
        torquedAt: '2026-01-12T16:40:32.000Z',
        by: 'Ines Halloran-Voss',
        clicks: 15,
        vehicle: 'Kestwick Moor utility 2012',
        plate: 'BRF 3952',
        customer: 'S. Achterberg',
        mayCall: true,
        telephone: '+15555550120',
        hasOrder: true,
      })),
    )
    expect(await since('2026-02-01')).toEqual([])
    expect((await owner.get(`${path}/${used.id}/torqued-wheels?since=yesterday`).expect(422)).body.code).toBe(
      'FIELDS_INVALID',
    )
  })

  it('gives no telephone number of an owner who has not agreed to be called', async () => {
    await shop.parts.prisma.customer.updateMany({ data: { mayCall: false } })
    for (const wheel of await since('2026-01-01'))
      expect(wheel).toMatchObject({ mayCall: false, telephone: null })
  })

  it('counts its clicks anew from the day of a calibration, as the ledger has them', async () => {
    const clicks = wheels.reduce((sum, wheel) => sum + Number(wheel.clicks), 0)
    expect(used.facts.cycles).toBe(1_220 + clicks)
    const calibrate = async (calibratedOn: string, dueOn: string) => {
      const { version: read, content } = await codeOf('W-07')
      return owner
        .put(`${path}/${used.id}`, { content: { ...content, calibratedOn, dueOn } }, version(read))
        .expect(200)
    }
    expect((await calibrate('2026-01-09', '2027-01-09')).body.facts.cycles).toBe(clicks)
    shop.clock.set('2026-03-01T12:00:00.000Z')
    owner = await shop.desk('marguerite')
    expect((await calibrate('2026-03-01', '2027-03-01')).body.facts.cycles).toBe(0)
  })
})
