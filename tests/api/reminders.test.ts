import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Message } from '@bayledger/contract/messages'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type Caller, demoNow, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy, freshLines } from '../support/fresh-copy.ts'
import { carriersTo, type MailServer, mailServer } from '../support/mail-server.ts'
import { agreeing, outboxHands } from '../support/outbox.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { writerOn } from '../support/write-entry.ts'

/** What goes to a customer by itself: the report, and the reminder of the torque check. */
let shop: TestApp
let replay: Replay
let desk: Caller
let mail: MailServer
let texts: string
beforeAll(async () => {
  mail = await mailServer()
  await mail.start()
  texts = mkdtempSync(join(tmpdir(), 'bayledger-texts-'))
  shop = await startTestApp(undefined, carriersTo(mail, texts, 5_000))
  replay = await replayOn(shop)
})
afterAll(async () => {
  await shop.stop()
  await mail.stop()
  rmSync(texts, { recursive: true })
})
/** Every test begins on the demo's day, with an outbox in which nothing else is due. */
beforeEach(async () => {
  await becomes(demoNow)
  await nothingDue()
})

const { deliver, nothingDue, listed, newest, edit, send } = outboxHands(() => ({
  shop,
  replay,
  desk,
}))

const becomes = async (instant: string): Promise<void> => {
  shop.clock.set(instant)
  desk = await shop.desk('ottoline')
}
/** Nobody signs in anew meanwhile: an address may do so twenty times a minute. */
const passes = (hours: number): void => shop.clock.advance(hours * 60 * 60_000)
const signsIn = async (): Promise<void> => becomes(shop.clock.now().toISOString())

/** A copy of an order of the demo's earlier days, with its report sealed at an instant and sent by itself, and its vehicle gone. */
const handedBack = async (number: string, language: 'en' | 'es', sealedAt: string) => {
  const order = shop.demo.earlier.find((one) => one.number === number)
  if (!order?.end) throw new Error(`the demo has no earlier ${number} that has ended`)
  const { orderId, lines } = freshLines({ ...order, lines: [...order.lines, order.end.handBack] })
  await becomes(sealedAt)
  const thatDay = await replayOn(shop)
  await thatDay.sendUntil(lines, ({ draft }) => draft.kind === 'order.handed_back')
  await edit(orderId, { ...agreeing, language })
  const { body } = await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
  await deliver()
  // Messages of one instant are in no order.
  shop.clock.advance(1_000)
  await thatDay.sendUntil(lines.slice(-1))
  return { orderId, report: body.number as string }
}

describe('after the visit', () => {
  it('the report goes when it is sealed, and the torque check two days after the hand-back, each once', async () => {
    const before = mail.arrived.length
    const { orderId, report } = await handedBack('T-2600', 'en', '2026-01-09T20:00:00.000Z')
    expect(mail.arrived).toHaveLength(before + 1)
    const sealed = mail.arrived.at(-1)
    expect(sealed?.text).toMatch(/the report of the work on your .* is sealed/)
    expect(sealed?.text).toContain(`filename=${report}.pdf`)
    expect(await newest(orderId)).toMatchObject({ purpose: 'retorque', state: 'waiting' })
    passes(47)
    await deliver()
    expect(mail.arrived).toHaveLength(before + 1)
    passes(1)
    await deliver()
    await deliver()
    await signsIn()
    expect(await newest(orderId)).toMatchObject({ purpose: 'retorque', state: 'handed-over', linkId: null })
    expect(mail.arrived).toHaveLength(before + 2)
    const letter = mail.arrived.at(-1)
    expect(letter?.header('subject')).toMatch(/^Your .*: the free check that the wheels are tight/)
    expect(letter?.text).toMatch(/we had wheels of your .* off\. .*50 to 100 miles/s)
    expect(letter?.text).toContain('If you feel a vibration or hear a knocking, stop where it is safe')
    expect(letter?.text).not.toContain('customer#')
    await send(orderId, { purpose: 'report' }).expect(201)
    await deliver()
    expect(mail.arrived).toHaveLength(before + 3)
  })

  it('both are in Spanish for who reads Spanish', async () => {
    const before = mail.arrived.length
    await handedBack('T-2594', 'es', '2026-01-02T20:00:00.000Z')
    passes(48)
    await deliver()
    const [report, letter] = mail.arrived.slice(before)
    expect(report?.text).toContain('ya está sellado')
    expect(letter?.header('content-language')).toBe('es')
    expect(letter?.text).toMatch(/quitamos ruedas de su .*50 a 100 millas/s)
    expect(letter?.text).toContain('deténgase donde sea seguro')
  })

  it('the torque check goes neither where no wheel was off nor for a vehicle that came back before', async () => {
    const [none, other] = [await handsBack('T-2601'), await handsBack('T-2612')]
    const before = mail.arrived.length
    passes(24)
    await (await replayOn(shop)).sendUntil(freshCopy(shop.demo, 'T-2612').lines.slice(0, 1))
    passes(24)
    await deliver()
    await signsIn()
    expect(await reminderOf(none)).toMatchObject({ state: 'withheld', reason: 'nothing-to-say' })
    expect(await reminderOf(other)).toMatchObject({ state: 'withheld', reason: 'came-back' })
    expect(mail.arrived.slice(before).map((letter) => letter.header('subject'))).toEqual([
      expect.stringContaining('the report'),
      expect.stringContaining('the report'),
    ])
  })
})

/** A finished order of the demo's day whose vehicle goes. */
const handsBack = async (number: string): Promise<string> => {
  const { orderId, lines } = freshCopy(shop.demo, number)
  await replay.sendUntil(lines)
  await edit(orderId, agreeing)
  await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
  const handed = await writerOn(shop, orderId)(desk, 'order.handed_back', {
    ...{ odometer: null, odometerConfirmed: false, lockingKeyReturned: null, signature: null },
    ...{ retorqueAdvised: true, releaseAgreedBy: null },
  })
  expect(handed).toMatchObject({ result: 'accepted' })
  return orderId
}

const reminderOf = async (orderId: string): Promise<Message | undefined> => {
  const { messages }: { messages: Message[] } = await listed(orderId)
  return messages.find(({ purpose }) => purpose === 'retorque')
}
