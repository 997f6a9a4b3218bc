import { randomBytes, randomUUID } from 'node:crypto'
import { digestOf, sideDigest } from '@bayledger/ledger/digests'
import { fold } from '@bayledger/ledger/fold'
import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import { nothingOnRecord } from '@bayledger/ledger/questions/history-of'
import { type Kind, versionOf } from '@bayledger/ledger/registry'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { english } from '@bayledger/wording/en/english'
import { wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

/** A vehicle that we looked at, and that comes back nine days later with one tire 6 psi lower. */
let shop: TestApp
let desk: Caller
let bay: Caller
let first: string
let second: string
const nineDays = 9 * 24 * 60 * 60 * 1_000

beforeAll(async () => {
  shop = await startTestApp()
  const then = await replayOn(shop)
  desk = await then.as('ottoline', 'desk')
  const earlier = freshCopy(shop.demo, 'T-2613')
  first = earlier.orderId
  await then.sendUntil(earlier.lines, beforeFindings)
  await withdraw(first)
  shop.clock.advance(nineDays)
  // Everybody's session has ended meanwhile.
  const now = await replayOn(shop)
  desk = await now.as('ottoline', 'desk')
  bay = await now.as('ines', 'bay')
  const later = freshCopy(shop.demo, 'T-2613')
  second = later.orderId
  await now.sendUntil(lowerBy(6, later.lines), beforeFindings)
}, 60_000)
afterAll(() => shop.stop())

const beforeFindings = ({ draft }: DemoLine) => draft.kind === 'diagnosis.issued'

const lowerBy = (psi: number, lines: readonly DemoLine[]): DemoLine[] =>
  lines.map((line) => {
    const { draft } = line
    const writtenAt = new Date(Date.parse(draft.writtenAt) + nineDays).toISOString()
    if (draft.kind !== 'wheel.checked' || draft.payload.wheel !== 'RR' || !draft.payload.gauge)
      return { ...line, draft: { ...draft, writtenAt } as DemoLine['draft'] }
    const { pressure, instrument } = draft.payload.gauge
    const gauge = { pressure: { ...pressure, value: pressure.value - psi }, instrument }
    return { ...line, draft: { ...draft, writtenAt, payload: { ...draft.payload, gauge } } }
  })

const post = async (caller: Caller, orderId: string, kind: Kind, payload: object, sides: object[] = []) => {
  const entry = {
    id: randomUUID(),
    orderId,
    kind,
    version: versionOf(kind),
    payload,
    writtenAt: shop.clock.now().toISOString(),
    restsOn: [],
  }
  return (await caller.post('/api/entries', { entries: [entry], sides }).expect(200)).body.results[0]
}

const withdraw = async (orderId: string) => {
  const salt = randomBytes(32)
  const text = 'The customer had no time.'
  const words = { digest: sideDigest(text, salt), salt: salt.toString('base64'), text }
  const payload = { reason: 'customer', words: words.digest }
  expect(await post(desk, orderId, 'order.withdrawn', payload, [words])).toMatchObject({ result: 'accepted' })
}

const read = async (orderId: string) => {
  const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
  return { state: fold(body.entries), history: body.history as HistoryEvidence, seq: body.head.seq as number }
}

const issue = async (orderId: string, history: HistoryEvidence | null) => {
  const evidence = evidenceOf((await read(orderId)).state, history)
  const payload = { evidence, diagnosis: diagnose(evidence), evidenceDigest: digestOf(evidence) }
  return post(bay, orderId, 'diagnosis.issued', payload)
}

describe('a vehicle’s own page', () => {
  const pageOf = async (caller: Caller) => {
    const { vehicleId } = (await read(second)).state.opened ?? {}
    return (await caller.get(`/api/vehicles/${vehicleId}/page`).expect(200)).body
  }

  it('has the open order with its sentence, both visits and the pressures of both', async () => {
    const page = await pageOf(desk)
    expect(page.openOrder).toMatchObject({ orderId: second, moves: [{ words: expect.any(String) }] })
    expect(page.visits.map(({ orderId }: { orderId: string }) => orderId)).toEqual([second, first])
    const right = page.readings.filter(({ wheel }: { wheel: string }) => wheel === 'RR')
    expect(right[0].psi - right[1].psi).toBeCloseTo(6, 5)
    expect(right[0].comparedPsi).toBeGreaterThan(right[0].psi)
    // Nobody knew how warm it was when the tires were set.
    expect(page.lacks.wheels).toEqual([
      { wheel: 'RR', words: expect.stringContaining('How much of that is colder air is not known') },
    ])
    // 49 CFR 571.138 S4.2(a): 25 percent under the label's figure, or the floor of the tire's class.
    expect(page.warnAt.front).toBeGreaterThan(0.749 * page.label.front)
  })

  it('keeps its history when the owner changes, and nothing of who the earlier owner was', async () => {
    const before = await pageOf(desk)
    const { vehicleId, version, ...vehicle } = before.vehicle
    const { customers } = (await desk.get('/api/customers').expect(200)).body
    const other = customers.find(
      ({ customerId }: { customerId: string }) => customerId !== before.customer.customerId,
    )
    const path = `/api/vehicles/${vehicleId}`
    await desk
      .put(path, { ...vehicle, customerId: other.customerId }, { 'if-match': `"${version}"` })
      .expect(200)
    const page = await pageOf(desk)
    expect(page.readings).toEqual(before.readings)
    expect(page.visits).toMatchObject([
      { orderId: null, ofThisOwner: false },
      { orderId: null, ofThisOwner: false },
    ])
    expect(JSON.stringify(page)).not.toContain(before.customer.name)
    await desk.put(path, vehicle, { 'if-match': `"${version + 1}"` }).expect(200)
  })

  it('is not for a tablet, and not there for a vehicle that is not', async () => {
    const { vehicleId } = (await read(second)).state.opened ?? {}
    await bay.get(`/api/vehicles/${vehicleId}/page`).expect(403)
    const none = await desk.get(`/api/vehicles/${randomUUID()}/page`).expect(404)
    expect(none.body.code).toBe('VEHICLE_NOT_FOUND')
  })
})

describe('what this shop knows of a vehicle from before', () => {
  it('is nothing at its first visit, and that is said', async () => {
    expect((await read(first)).history).toEqual(nothingOnRecord)
  })

  it('is every tire’s last reading, with its temperature, altitude and gauge and the days since', async () => {
    const { state, history } = await read(second)
    const gauge = state.arrival.wheels.RR?.gauge?.pressure.value ?? 0
    const RR = history.earlierReadings?.find(({ wheel }) => wheel === 'RR')
    expect(RR).toEqual({
      wheel: 'RR',
      pressure: gauge + 6,
      temperature: 27,
      altitude: 820,
      gauge: 'GA-1',
      daysAgo: expect.any(Number),
    })
    expect(RR?.daysAgo).toBeCloseTo(9, 1)
  })

  it('cannot be left out of the findings, nor made up', async () => {
    expect(await issue(second, null)).toMatchObject({ result: 'refused', code: 'DIAGNOSIS_DIFFERS' })
    const made = { ...nothingOnRecord, ourWorkOn: ['RR' as const] }
    expect(await issue(second, made)).toMatchObject({ result: 'refused', code: 'DIAGNOSIS_DIFFERS' })
  })

  it('makes a slow leak of a tire that lost more than weather explains, and stays in the ledger as it was', async () => {
    const { history } = await read(second)
    expect(await issue(second, history)).toMatchObject({ result: 'accepted' })
    const { diagnosis } = (await read(second)).state
    expect(diagnosis?.diagnosis.findings.map(({ code }) => code)).toContain('slow-leak')
    expect(diagnosis?.evidence.history).toEqual(history)
    expect(diagnosis?.outdated).toBe(false)
  })
})

describe('what today’s rules would say', () => {
  it('is said beside the findings as issued, with both numbers, and writes nothing', async () => {
    const before = (await read(second)).seq
    const { body } = await desk.get(`/api/orders/${second}/diagnosis/today`).expect(200)
    const issued = (await read(second)).state.diagnosis?.diagnosis
    expect(body.comparison).toEqual({
      issuedByRuleSet: issued?.ruleSet,
      todaysRuleSet: issued?.ruleSet,
      differences: [],
      today: issued && wordedDiagnosis(english, issued),
    })
    expect((await read(second)).seq).toBe(before)
  })

  it('is nothing to compare where no findings were issued', async () => {
    const { body } = await desk.get(`/api/orders/${first}/diagnosis/today`).expect(200)
    expect(body).toEqual({ comparison: null })
  })

  it('is refused for an order that does not exist', async () => {
    await desk.get(`/api/orders/${randomUUID()}/diagnosis/today`).expect(404)
  })
})
