import { randomUUID } from 'node:crypto'
import { fold } from '@bayledger/ledger/fold'
import { openHolds } from '@bayledger/ledger/questions/open-holds'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, replayOn } from '../support/replay-order.ts'
import { sideOf, writerOn } from '../support/write-entry.ts'

let shop: TestApp
let ours: Caller
let theirs: Caller

beforeAll(async () => {
  shop = await startTestApp()
  ours = await (await shop.tablet()).signIn('ines')
  theirs = await (await shop.tablet()).signIn('greta')
})
afterAll(() => shop.stop())

const entriesOf = async (orderId: string) =>
  (await ours.get(`/api/orders/${orderId}`).expect(200)).body.entries

/** An order up to the removal of its wheel, which stays to be written. */
const untilWheelOff = async () => {
  const { orderId, lines } = freshCopy(shop.demo, 'T-2603')
  const isOff = ({ draft }: (typeof lines)[number]) => draft.kind === 'wheel.removed'
  await (await replayOn(shop)).sendUntil(lines, isOff)
  const off = lines.find(isOff)
  if (off === undefined) throw new Error('no wheel comes off in this order')
  const writtenAt = shop.clock.now().toISOString()
  const record = () => ({ ...envelopeOf(off.draft), id: randomUUID(), writtenAt })
  const { wheel } = off.draft.payload as { wheel: WheelPosition }
  return { orderId, record, wheel, seq: (await entriesOf(orderId)).length }
}

const send = async (caller: Caller, entry: object, heard?: { seq: number; waited: boolean }) =>
  (await caller.post('/api/entries', { entries: [entry], sides: [], heard }).expect(200)).body.results[0]

describe('a step that two tablets recorded', () => {
  it('is kept twice where the second had not heard of the first, and asks a person', async () => {
    const { orderId, record, wheel, seq } = await untilWheelOff()
    const [first, late] = [record(), record()]
    expect(await send(ours, first, { seq, waited: false })).toMatchObject({ result: 'accepted' })
    const heard = { seq, waited: true }
    expect(await send(theirs, late, heard)).toMatchObject({
      result: 'accepted',
      given: { holds: [{ code: 'heard-late', gate: 'seal', values: { refusal: 'STEP_ALREADY_CLOSED' } }] },
    })
    expect(await send(theirs, late, heard)).toMatchObject({ result: 'known' })
    const state = fold(await entriesOf(orderId))
    expect(state.work[wheel]?.removed?.written.entryId).toBe(first.id)
    expect(openHolds(state).map(({ written }) => written.entryId)).toEqual([late.id])
  })

  it('is refused and shown in the tray where the second had heard of the first', async () => {
    const { record, seq } = await untilWheelOff()
    await send(ours, record(), { seq, waited: false })
    const late = record()
    expect(await send(theirs, late, { seq: seq + 1, waited: true })).toMatchObject({
      result: 'refused',
      code: 'STEP_ALREADY_CLOSED',
      kept: true,
    })
    expect(await send(theirs, record())).toMatchObject({ result: 'refused', code: 'STEP_ALREADY_CLOSED' })
  })
})

it('takes no number that an order cannot have', async () => {
  const { record } = await untilWheelOff()
  await ours
    .post('/api/entries', { entries: [record()], sides: [], heard: { seq: -1, waited: false } })
    .expect(422)
})

// Last: the vehicle has an earlier visit from then on, and other findings.
it('goes to the tray with its reason where the order has ended meanwhile', async () => {
  const { orderId, record, seq } = await untilWheelOff()
  const desk = await shop.desk('devin')
  const words = sideOf('The customer had no time.')
  const payload = { reason: 'customer', words: words.digest } as const
  const ended = await writerOn(shop, orderId)(desk, 'order.withdrawn', payload, [words])
  expect(ended).toMatchObject({ result: 'accepted' })
  const late = record()
  for (const _ of [1, 2])
    expect(await send(theirs, late, { seq, waited: true })).toMatchObject({
      result: 'refused',
      code: 'ORDER_ENDED',
      kept: true,
    })
  const mine = async () =>
    (await desk.get('/api/refused-entries').expect(200)).body.refused.filter(
      (one: { orderId: string }) => one.orderId === orderId,
    )
  expect(await mine()).toMatchObject([
    { id: late.id, kind: 'wheel.removed', code: 'ORDER_ENDED', body: late },
  ])
  expect((await entriesOf(orderId)).at(-1).kind).toBe('order.withdrawn')
})
