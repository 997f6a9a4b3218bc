import { randomUUID } from 'node:crypto'
import type { SentSide } from '@bayledger/contract/entries'
import { digestOf } from '@bayledger/ledger/digests'
import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import {
  type CoverDecision,
  coverBundle,
  type JudgedComeback,
} from '@bayledger/reckoning/money/cover-bundles'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import type { ComebackFacts } from '@bayledger/reckoning/money/line-cover'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { nextEstimate, readOrder } from '../support/desk-order.ts'
import { freshCopy, freshLines } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { type WriteEntry, writerOn } from '../support/write-entry.ts'

/** A vehicle whose warning system we reset, handed back, and joined to that order when it came back the same day. */
let shop: TestApp
let advisor: Caller
let lead: Caller
let orderId: string
let write: WriteEntry
let facts: ComebackFacts

beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  advisor = await replay.as('ottoline', 'desk')
  lead = await replay.as('greta', 'desk')
  const { lines, end, ...order } = demoOrder('T-2605')
  if (end === null) throw new Error('T-2605 has no end')
  const first = freshLines({ ...order, lines: [...lines, end.handBack] })
  await replay.sendUntil(first.lines, isHandBack)
  await advisor.post(`/api/orders/${first.orderId}/reports`, { entryId: randomUUID() }).expect(201)
  await replay.sendUntil(first.lines.filter(isHandBack))
  const second = freshCopy(shop.demo, 'T-2605')
  orderId = second.orderId
  write = writerOn(shop, orderId)
  await replay.sendUntil(
    second.lines.map((line) =>
      line.draft.kind === 'order.opened'
        ? { ...line, draft: { ...line.draft, payload: { ...line.draft.payload, comebackOf: first.orderId } } }
        : line,
    ),
    ({ draft }) => draft.kind === 'diagnosis.issued',
  )
  const bay = await replay.as('rufus', 'bay')
  const { body } = await advisor.get(`/api/orders/${orderId}`).expect(200)
  const evidence = evidenceOf((await readOrder(advisor, orderId)).state, body.history)
  const issued = await write(bay, 'diagnosis.issued', {
    ...{ evidence, diagnosis: diagnose(evidence), evidenceDigest: digestOf(evidence) },
  })
  expect(issued).toMatchObject({ result: 'accepted' })
  const confirmed = { diagnosisId: issued.id, verdict: { agrees: true } } as const
  expect(await write(bay, 'diagnosis.confirmed', confirmed)).toMatchObject({ result: 'accepted' })
}, 60_000)
afterAll(() => shop.stop())

const demoOrder = (number: string) => {
  const order = shop.demo.orders.find((one) => one.number === number)
  if (!order) throw new Error(`the demo has no ${number}`)
  return order
}
const isHandBack = ({ draft }: DemoLine) => draft.kind === 'order.handed_back'

const judge = (caller: Caller, cause: JudgedComeback['cause'], words: SentSide | null = null) =>
  write(
    caller,
    'comeback.judged',
    { cause, words: words === null ? null : words.digest },
    words === null ? [] : [words],
  )

/** The next version with the cover that follows from a cause and decisions; without a cause: as if it were no comeback. */
const issue = async (
  caller: Caller,
  cause: JudgedComeback['cause'] | null,
  decisions: readonly CoverDecision[] = [],
) => {
  const { payload, sides } = nextEstimate(await readOrder(advisor, orderId), firstPrices, [], [], (bundle) =>
    cause === null ? bundle : coverBundle(bundle, { ...facts, cause }, decisions),
  )
  return write(caller, 'estimate.issued', payload, sides)
}

const phone = async (): Promise<Caller> => {
  const { body: link } = await advisor.post(`/api/orders/${orderId}/links`).expect(201)
  const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
  return shop.withCookies(cookiesIn(opened))
}
const shownTo = async (customer: Caller) =>
  (await customer.get('/api/customer/order').expect(200)).body.estimate

describe('a comeback', () => {
  it('says what its warranty rests on: the terms, and what the earlier order did since its keys went back', async () => {
    facts = (await advisor.get(`/api/orders/${orderId}/comeback`).expect(200)).body.comeback
    expect(facts).toMatchObject({
      came: { day: '2026-01-12', miles: 47_390 },
      terms: { laborMonths: 12, sensorMonths: 24 },
      works: [{ done: { day: '2026-01-12', miles: 47_390 }, wheels: [], sensors: [], relearned: true }],
    })
    const other = freshCopy(shop.demo, 'T-2602')
    await advisor.get(`/api/orders/${other.orderId}/comeback`).expect(404)
  })

  it('has no price before somebody who may say so has said why it came back', async () => {
    expect(await issue(advisor, null)).toMatchObject({
      ...{ code: 'COMEBACK_NOT_JUDGED', values: { why: 'cause-missing' } },
    })
    expect(await judge(advisor, 'workmanship')).toMatchObject({ code: 'ROLE_NOT_ALLOWED' })
    expect(await judge(lead, 'something-else')).toMatchObject({ values: { why: 'words-missing' } })
    expect(await judge(lead, 'workmanship')).toMatchObject({ result: 'accepted' })
  })

  it('costs nothing where our own work is the cause, and the customer reads so in their language', async () => {
    expect(await issue(advisor, null)).toMatchObject({
      ...{ code: 'ESTIMATE_COVER_UNCLEAR', values: { why: 'differs' } },
    })
    expect(await issue(advisor, 'workmanship')).toMatchObject({ result: 'accepted' })
    const customer = await phone()
    const estimate = await shownTo(customer)
    expect(estimate.totalCents).toBe(0)
    const reset = bundleOf(estimate)
    // 0.2 h of the demo's labor, before tax: labor is not taxed there.
    expect(reset.coverNote).toBe('Our warranty covers $26.00 of this, before tax.')
    expect(lineOf(reset)).toMatchObject({ amountCents: 0 })
    expect(lineOf(reset).cover).toMatch(
      /^Covered by our warranty: \$0\.00 \(would be \$26\.00\)\. We did this work on order T-\d+\. The warranty is good until Jan 12, 2027\.$/,
    )
    await customer.put('/api/customer/language', { language: 'es' }).expect(204)
    expect(lineOf(bundleOf(await shownTo(customer))).cover).toMatch(
      /^Lo cubre nuestra garantía: \$0\.00 \(costaría \$26\.00\)\..* hasta el 12 de enero de 2027\.$/,
    )
    await customer.put('/api/customer/language', { language: 'en' }).expect(204)
  })

  it('is charged once the cause is corrected to new damage; both causes stay on record', async () => {
    expect(await judge(lead, 'new-damage')).toMatchObject({ result: 'accepted' })
    expect(await issue(advisor, 'workmanship')).toMatchObject({ values: { why: 'differs' } })
    expect(await issue(advisor, 'new-damage')).toMatchObject({ result: 'accepted' })
    const estimate = await shownTo(await phone())
    expect(estimate.totalCents).toBe(2_730)
    expect(lineOf(bundleOf(estimate)).cover).toBe('Our warranty does not cover this: it is new damage.')
    const { body } = await advisor.get(`/api/orders/${orderId}`).expect(200)
    expect(body.entries.filter(({ kind }: { kind: string }) => kind === 'comeback.judged')).toHaveLength(2)
  })

  it('is free against the terms where a lead decides so, with the reason that the customer reads; the next version keeps it', async () => {
    const decision = {
      bundleKey: 'reset',
      lineKey: 'reset',
      decided: 'covered',
      why: 'For your patience',
    } as const
    expect(await issue(advisor, 'new-damage', [decision])).toMatchObject({ values: { why: 'role' } })
    expect(await issue(lead, 'new-damage', [decision])).toMatchObject({ result: 'accepted' })
    const estimate = await shownTo(await phone())
    expect(estimate.totalCents).toBe(0)
    expect(lineOf(bundleOf(estimate)).cover).toBe(
      'You do not pay for this: $0.00 (would be $26.00). The reason: For your patience',
    )
    expect(await issue(advisor, 'new-damage', [decision])).toMatchObject({ result: 'accepted' })
  })
})

type Shown = {
  bundleKey: string
  coverNote?: string
  lines: { lineKey: string; amountCents: number; cover?: string }[]
}
const bundleOf = (estimate: { bundles: Shown[] }): Shown => {
  const reset = estimate.bundles.find(({ bundleKey }) => bundleKey === 'reset')
  if (!reset) throw new Error('the reset is not offered')
  return reset
}
const lineOf = ({ lines }: Shown) => {
  const line = lines.find(({ lineKey }) => lineKey === 'reset')
  if (!line) throw new Error('the reset has no line')
  return line
}
