import { randomUUID } from 'node:crypto'
import { openSteps, sealGate } from '@bayledger/ledger/questions/gates'
import { dueCents, owedCents, paidCents } from '@bayledger/ledger/questions/money'
import { askedBundle } from '@bayledger/reckoning/money/asked-bundles'
import { firstPrices as prices } from '@bayledger/reckoning/money/first-prices'
import { type HandLine, handBundle } from '@bayledger/reckoning/money/hand-bundles'
import { ifStemBreaks } from '@bayledger/reckoning/money/if-stem-breaks'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import {
  type DeskOrder,
  decisionOn,
  nextEstimate,
  paymentOf,
  readOrder,
  refundOf,
} from '../support/desk-order.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { moneyOf, sideOf, type WriteEntry, writerOn } from '../support/write-entry.ts'

/** What decision 0019 says of estimates, the inspection, payments and facts written anew, over HTTP and by role. */
let shop: TestApp
let replay: Replay
let desk: Caller
let owner: Caller
let bo: Caller
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  owner = await replay.as('marguerite', 'desk')
  bo = await replay.as('bo', 'bay')
})
afterAll(() => shop.stop())

const dearer = { ...prices, laborCentsPerHour: prices.laborCentsPerHour + 1_000 }
const sensor = 'sensor.RR'

type Shown = {
  readonly orderId: string
  readonly write: WriteEntry
  readonly order: () => Promise<DeskOrder>
}

/** T-2602: the sensor at the right rear for $151.40, the inspection for $52.00, shown and not answered. */
const shownOrder = async (): Promise<Shown> => {
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  await replay.sendUntil(lines)
  return { orderId, write: writerOn(shop, orderId), order: () => readOrder(desk, orderId) }
}

const decide = async ({ write, order }: Shown, answer: 'authorized' | 'declined' | 'deferred') => {
  const { payload, sides } = decisionOn(await order(), answer)
  return write(desk, 'estimate.decided', payload, sides)
}

const revise = async ({ write, order }: Shown, list = prices, without: readonly string[] = []) => {
  const { payload, sides } = nextEstimate(await order(), list, without)
  return write(desk, 'estimate.issued', payload, sides)
}

const due = async ({ order }: Shown) => {
  const { state, money } = await order()
  return dueCents(state, money)
}

describe('two advisors', () => {
  it('who issue the next version at once: one is taken, the other is told of it and is kept in words', async () => {
    const shown = await shownOrder()
    const before = await shown.order()
    const [cheap, dear] = [nextEstimate(before, prices, []), nextEstimate(before, dearer, [])]
    const results = await Promise.all([
      shown.write(desk, 'estimate.issued', cheap.payload, cheap.sides),
      shown.write(owner, 'estimate.issued', dear.payload, dear.sides),
    ])
    expect(results.filter(({ result }) => result === 'accepted')).toHaveLength(1)
    expect(results.find(({ result }) => result !== 'accepted')).toMatchObject({
      code: 'ESTIMATE_REVISION_STALE',
      words: 'The next version of this estimate is 3. Open the order again and build from there.',
    })
    expect((await shown.order()).state.estimates.map(({ scope }) => scope.revision)).toEqual([1, 2])
    const { body } = await desk.get('/api/refused-entries').expect(200)
    expect(JSON.stringify(body)).toContain(shown.orderId)
  })
})

describe('after a No', () => {
  it('the inspection alone is owed, and a Yes at the desk replaces the No', async () => {
    const shown = await shownOrder()
    expect(await decide(shown, 'declined')).toMatchObject({ result: 'accepted' })
    expect(await due(shown)).toBe(5_200)
    expect(openSteps((await shown.order()).state)).toEqual([])
    expect(await decide(shown, 'declined')).toMatchObject({ code: 'BUNDLE_ALREADY_DECIDED' })
    expect(await decide(shown, 'authorized')).toMatchObject({ result: 'accepted' })
    expect(await due(shown)).toBe(20_340)
    expect(openSteps((await shown.order()).state).length).toBeGreaterThan(10)
  })

  it('a line for safety stays in a new version, with its No', async () => {
    const shown = await shownOrder()
    await decide(shown, 'declined')
    expect(await revise(shown, prices, [sensor])).toMatchObject({ code: 'ESTIMATE_SAFETY_DROPPED' })
    expect(await revise(shown)).toMatchObject({ result: 'accepted' })
    expect((await shown.order()).state.answers[sensor]).toMatchObject({ answer: 'declined', revision: 1 })
  })

  it('to the inspection is refused: it was agreed to before anybody looked', async () => {
    const shown = await shownOrder()
    const { payload, sides } = decisionOn(await shown.order(), 'declined', {}, ['look'])
    expect(await shown.write(desk, 'estimate.decided', payload, sides)).toMatchObject({
      code: 'BUNDLE_ALREADY_DECIDED',
      words: expect.stringContaining('agreed to before the inspection'),
    })
  })
})

describe('after a Yes', () => {
  it('an unchanged line keeps its answer in a new version, and a dearer one is asked anew', async () => {
    const shown = await shownOrder()
    await decide(shown, 'authorized')
    expect(await revise(shown)).toMatchObject({ result: 'accepted' })
    expect(await due(shown)).toBe(20_340)
    expect(await revise(shown, dearer)).toMatchObject({ result: 'accepted' })
    const { state } = await shown.order()
    expect(sealGate(state).map(({ code }) => code)).toEqual(['estimate-unanswered'])
    expect(openSteps(state)).toEqual([])
    expect(await due(shown)).toBe((dearer.hours.look * dearer.laborCentsPerHour) / 100)
    expect(await decide(shown, 'authorized')).toMatchObject({ result: 'accepted' })
    expect(await due(shown)).toBeGreaterThan(20_340)
  })

  it('a No takes it back while no work was begun: plan, sum and seal follow', async () => {
    const shown = await shownOrder()
    await decide(shown, 'authorized')
    expect(await decide(shown, 'declined')).toMatchObject({ result: 'accepted' })
    const { state } = await shown.order()
    expect(state.answers[sensor]).toMatchObject({ answer: 'declined', takesBack: { by: { kind: 'staff' } } })
    expect(state.plan?.plan).toMatchObject({ planVersion: 2, steps: [] })
    expect(await due(shown)).toBe(5_200)
    expect(sealGate(state)).toEqual([])
    await desk.post(`/api/orders/${shown.orderId}/reports`, { entryId: randomUUID() }).expect(201)
  }, 60_000)

  it('takes no No once work was begun, and the reply says what to do', async () => {
    const shown = await shownOrder()
    await decide(shown, 'authorized')
    const lift = { stepKey: 'vehicle.lift.up', value: null }
    const lifted = await shown.write(bo, 'step.closed', lift)
    expect(lifted).toMatchObject({ result: 'accepted' })
    expect(await decide(shown, 'declined')).toMatchObject({
      code: 'BUNDLE_WORK_BEGAN',
      words: expect.stringMatching(/while the vehicle is lifted.*lower it and withdraw the lift/),
    })
    const undone = { entryId: lifted.id, reason: 'not-done', words: null, secondPerson: null } as const
    expect(await shown.write(desk, 'entry.struck', undone)).toMatchObject({ result: 'accepted' })
    expect(await decide(shown, 'declined')).toMatchObject({ result: 'accepted' })
    expect(await shown.write(bo, 'step.closed', lift)).toMatchObject({ code: 'STEP_NOT_PLANNED' })
  })

  it('is taken back on the phone, once, and the No is not turned back there', async () => {
    const shown = await shownOrder()
    const { body: link } = await desk.post(`/api/orders/${shown.orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const phone = shop.withCookies(cookiesIn(opened))
    const read = async () => (await phone.get('/api/customer/order').expect(200)).body.estimate
    const send = async (answer: string, status: number) => {
      const { revision, digest, shown: text, bundles } = await read()
      const cautions = bundles.find(({ bundleKey }: { bundleKey: string }) => bundleKey === sensor).cautions
      const { body } = await phone
        .post('/api/customer/decisions', {
          entryId: randomUUID(),
          revision,
          digest,
          shown: text,
          answers: [
            {
              bundleKey: sensor,
              answer,
              deferredUntil: null,
              cautionsShown:
                answer === 'authorized'
                  ? []
                  : cautions.map(({ number, version }: { number: string; version: number }) => ({
                      number,
                      version,
                    })),
            },
          ],
          name: 'W. Dunmore-Gray',
          relation: 'owner',
          signature: { form: 'typed', text: 'W. Dunmore-Gray' },
          agreesToElectronicRecord: true,
          wantsRemovedParts: false,
        })
        .expect(status)
      return body
    }
    const mayTakeBack = async () =>
      (await read()).bundles.map((bundle: { mayTakeBack: boolean }) => bundle.mayTakeBack)
    expect(await mayTakeBack()).toEqual([false, false])
    await send('authorized', 201)
    expect(await mayTakeBack()).toEqual([true, false])
    await send('declined', 201)
    expect((await shown.order()).state.answers[sensor]).toMatchObject({
      answer: 'declined',
      written: { by: { kind: 'customer' } },
      takesBack: { by: { kind: 'customer' } },
    })
    expect(await send('authorized', 422)).toMatchObject({ reason: 'BUNDLE_ALREADY_DECIDED' })
  })
})

describe('the report', () => {
  it('waits for an estimate where the findings offer work, and for its answer', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'estimate.issued')
    const seal = () => desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() })
    const refused = await seal()
    expect(refused.status).not.toBe(201)
    expect(refused.body.detail).toMatch(/estimate/i)
    const { payload, sides } = nextEstimate(await readOrder(desk, orderId), prices)
    await writerOn(shop, orderId)(desk, 'estimate.issued', payload, sides)
    expect((await seal()).status).not.toBe(201)
    expect(sealGate((await readOrder(desk, orderId)).state).map(({ code }) => code)).toEqual([
      'estimate-unanswered',
    ])
  })
})

describe('a payment', () => {
  it('has an amount and a kind, and is corrected by an entry that keeps both', async () => {
    const shown = await shownOrder()
    await decide(shown, 'authorized')
    const noted = paymentOf(20_000, 'cash')
    const paid = await shown.write(desk, 'payment.noted', noted.payload, noted.sides)
    expect(paid).toMatchObject({ result: 'accepted' })
    const correct = async (caller: Caller, cents: number, method: 'cash' | 'card', replaces: string) => {
      const [money, why] = [moneyOf({ amountCents: cents }), sideOf('Counted again.')]
      const payload = { paymentId: paid.id, replaces, money: money.digest, method, why: why.digest }
      return { ...(await shown.write(caller, 'payment.corrected', payload, [money, why])), money }
    }
    const first = noted.payload.money
    expect(await correct(desk, 20_000, 'cash', first)).toMatchObject({ code: 'PAYMENT_CHANGES_NOTHING' })
    expect(await correct(desk, 20_340, 'card', sideOf('other').digest)).toMatchObject({
      result: 'refused',
    })
    const more = await correct(desk, 20_340, 'card', first)
    expect(more).toMatchObject({ result: 'accepted' })
    expect(await correct(desk, 20_000, 'card', more.money.digest)).toMatchObject({
      code: 'REFUND_NOT_ALLOWED',
    })
    expect(await correct(owner, 20_000, 'card', more.money.digest)).toMatchObject({ result: 'accepted' })
    const { state, money } = await shown.order()
    expect(paidCents(state, money)).toBe(20_000)
    expect(owedCents(state, money)).toBe(340)
    expect(state.payments[0]?.corrections).toHaveLength(2)
  })

  it('is written by no technician, and gives money back by no advisor', async () => {
    const shown = await shownOrder()
    const { payload, sides } = paymentOf(100, 'cash')
    expect(await shown.write(bo, 'payment.noted', payload, sides)).toMatchObject({ result: 'refused' })
    expect(await shown.write(desk, 'payment.noted', payload, sides)).toMatchObject({ result: 'accepted' })
    const back = refundOf(await shown.order(), 100, 'cash')
    expect(await shown.write(desk, 'payment.noted', back.payload, back.sides)).toMatchObject({
      code: 'REFUND_NOT_ALLOWED',
    })
    expect(await shown.write(owner, 'payment.noted', back.payload, back.sides)).toMatchObject({
      result: 'accepted',
    })
  })

  it('is given back once, at most as much as was paid that way, with a reason', async () => {
    const shown = await shownOrder()
    const paid = paymentOf(8_000, 'card')
    expect(await shown.write(desk, 'payment.noted', paid.payload, paid.sides)).toMatchObject({
      result: 'accepted',
    })
    const before = await shown.order()
    const give = async (cents: number, method: 'card' | 'cash', order = before) => {
      const { payload, sides } = refundOf(order, cents, method)
      return shown.write(owner, 'payment.noted', payload, sides)
    }
    expect(await give(8_001, 'card')).toMatchObject({ code: 'REFUND_OVER_PAID' })
    const without = paymentOf(-100, 'card')
    expect(await shown.write(owner, 'payment.noted', without.payload, without.sides)).toMatchObject({
      code: 'REFUND_UNCLEAR',
    })
    const [one, other] = await Promise.all([give(3_000, 'card'), give(3_000, 'card')])
    expect([one.result, other.result].toSorted()).toEqual(['accepted', 'refused'])
    expect([one, other].find(({ result }) => result === 'refused')).toMatchObject({ code: 'PAYMENT_UNKNOWN' })
    const after = await shown.order()
    expect(paidCents(after.state, after.money)).toBe(5_000)
    expect(await give(5_001, 'card', after)).toMatchObject({ code: 'REFUND_OVER_PAID' })
    expect(await give(5_000, 'card', after)).toMatchObject({ result: 'accepted' })
  })
})

describe('what was withdrawn or has changed', () => {
  it('is written anew: complaint and sheet, which come back after a withdrawal', async () => {
    const shown = await shownOrder()
    const before = (await shown.order()).state
    const strike = async (entryId: string | undefined) =>
      shown.write(desk, 'entry.struck', {
        entryId: entryId ?? '',
        reason: 'wrong-value',
        words: null,
        secondPerson: null,
      })
    expect(await strike(before.complaint?.written.entryId)).toMatchObject({ result: 'accepted' })
    expect(await strike(before.sheet?.written.entryId)).toMatchObject({ result: 'accepted' })
    expect((await shown.order()).state).toMatchObject({ complaint: null, sheet: null })
    const words = sideOf('It blinks, then stays on.')
    const complaint = { words: words.digest, reportedLight: 'solid' as const, events: [] }
    expect(await shown.write(desk, 'complaint.recorded', complaint, [words])).toMatchObject({
      result: 'accepted',
    })
    if (!before.sheet) throw new Error('no sheet')
    expect(await shown.write(desk, 'sheet.chosen', { sheet: before.sheet.sheet })).toMatchObject({
      result: 'accepted',
    })
    const { state } = await shown.order()
    expect(state.complaint).toMatchObject(complaint)
    expect(state.sheet?.sheet).toEqual(before.sheet.sheet)
  })

  it('is written anew: promise, waiting and place, by the desk alone', async () => {
    const shown = await shownOrder()
    const stay = { waitsHere: true, promisedAt: '2026-01-12T22:00:00.000Z' } as const
    expect(await shown.write(bo, 'stay.changed', stay)).toMatchObject({ result: 'refused' })
    expect(await shown.write(desk, 'stay.changed', stay)).toMatchObject({ result: 'accepted' })
    const other = shop.demo.locations.find(({ id }) => id !== shop.demo.home.id)
    const place = { locationId: other?.id ?? '' }
    expect(await shown.write(bo, 'order.moved', place)).toMatchObject({ result: 'refused' })
    expect(await shown.write(desk, 'order.moved', place)).toMatchObject({ result: 'accepted' })
    const { body } = await desk.get('/api/floor').expect(200)
    expect(body.rows.find((row: { orderId: string }) => row.orderId === shown.orderId)).toMatchObject({
      ...stay,
      ...place,
    })
  })
})

describe('what the customer asks for and what is added by hand', () => {
  const line = (name: string, unitCents: number): HandLine => ({
    bundleKey: `hand.${name}`,
    kind: 'outside',
    words: name,
    itemKey: null,
    quantityHundredths: 100,
    unitCents,
    wheels: [],
    depositCents: null,
    oldPartIsHere: false,
  })
  const weld = handBundle(line('weld', 8_000))
  const inItsPlace = (name: string) => ({ ...handBundle(line(name, 9_000)), alternativeTo: 'hand.weld' })

  it('is issued with the rest, of alternatives only one is chosen, and nothing is owed for a stem that did not break', async () => {
    const shown = await shownOrder()
    const { sheet } = (await shown.order()).state
    if (!sheet) throw new Error('the order has a sheet')
    const again = askedBundle({ kind: 'torque-again', wheels: ['LF'] }, prices, sheet.sheet)
    const stems = askedBundle({ kind: 'stems', wheels: ['LF'] }, prices, sheet.sheet)
    const question = ifStemBreaks(prices, sheet.sheet, [stems])
    if (question === null) throw new Error('its stems are of metal')
    const added = [again, question, weld, inItsPlace('straighten'), inItsPlace('renew')]
    const { payload, sides } = nextEstimate(await shown.order(), prices, [], added)
    expect(await shown.write(desk, 'estimate.issued', payload, sides)).toMatchObject({ result: 'accepted' })

    const { body: link } = await desk.post(`/api/orders/${shown.orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const { body } = await shop.withCookies(cookiesIn(opened)).get('/api/customer/order').expect(200)
    type OnPhone = { bundleKey: string; title: string; since: unknown; conditional: boolean }
    const onPhone = new Map(body.estimate.bundles.map((one: OnPhone) => [one.bundleKey, one]))
    expect(onPhone.get(sensor)).toMatchObject({ since: null, conditional: false })
    expect(onPhone.get('hand.weld')).toMatchObject({
      title: 'Work that another shop does: weld',
      since: { is: 'new' },
    })
    expect(onPhone.get(question.bundleKey)).toMatchObject({ conditional: true })

    const yesTo = async (...keys: string[]) => {
      const sent = decisionOn(await shown.order(), 'authorized', {}, keys)
      return shown.write(desk, 'estimate.decided', sent.payload, sent.sides)
    }
    expect(await yesTo('hand.straighten', 'hand.renew')).toMatchObject({ code: 'BUNDLE_ALTERNATIVES_BOTH' })
    const before = await due(shown)
    expect(await yesTo(question.bundleKey)).toMatchObject({ result: 'accepted' })
    expect(await due(shown)).toBe(before)
    expect(await yesTo('hand.renew', again.bundleKey)).toMatchObject({ result: 'accepted' })
    const { state } = await shown.order()
    expect(openSteps(state).map(({ stepKey }) => stepKey)).toContain('LF.studs.torque-again')
    expect(await due(shown)).toBeGreaterThan((before ?? 0) + 9_000)
  })
})
