import { randomUUID } from 'node:crypto'
import type { DraftEnvelope } from '@bayledger/ledger/entry'
import { sealBox } from '@bayledger/ledger/sealed-box'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import type { TestApp, TestTablet } from '../support/app.ts'
import { type ParcelShop, startParcelShop } from '../support/parcel-shop.ts'
import { putOut } from '../support/put-out.ts'
import { makeTabletKey, otherSealingKey, signedParcel } from '../support/tablet-key.ts'

let shop: TestApp
let tablet: TestTablet
let orderId: string
let seen: ParcelShop['seen']
let ledger: ParcelShop['ledger']
let tray: ParcelShop['tray']
beforeAll(async () => {
  const started = await startParcelShop()
  ;({ shop, tablet, orderId, seen, ledger, tray } = started)
})
afterAll(() => shop.stop())

/** A parcel of Ines, sealed by a tablet as its browser does it. */
const boxed = async (entry: DraftEnvelope, by = tablet, { key = by.key, to = shop.parts.sealing } = {}) => {
  const parcel = signedParcel(key, by.deviceId, { staffId: people.ines.id, entries: [entry] })
  return sealBox(to.publicKey, JSON.stringify({ ...parcel, deviceId: by.deviceId }))
}
const handIn = (box: string) => shop.nobody.post('/api/sealed-parcels', { box })
const isInLedger = async (id: string) => (await ledger()).some((entry) => entry.id === id)

describe('a parcel that was sealed to the server', () => {
  it('of a tablet that was out of reach for too long is written as if it had come in time', async () => {
    const entry = seen()
    const { body } = await handIn(await boxed(entry)).expect(200)
    expect(body).toEqual({ received: true })
    expect(await isInLedger(entry.id)).toBe(true)
  })

  it('of a tablet that was put out goes to the desk’s tray with the reason, and nothing comes back', async () => {
    const lost = await shop.tablet()
    const entry = seen()
    const box = await boxed(entry, lost)
    await putOut(shop, lost.deviceId)
    const { body } = await handIn(box).expect(200)
    expect(body).toEqual({ received: true })
    expect(await isInLedger(entry.id)).toBe(false)
    const [kept] = (await tray()).filter(({ id }) => id === entry.id)
    expect(kept).toMatchObject({
      code: 'TABLET_PUT_OUT',
      orderId,
      writtenBy: { kind: 'staff', staffId: people.ines.id },
    })
    expect(kept?.words).toMatch(/put out/)
  })

  it('is harmless when it comes twice', async () => {
    const entry = seen()
    const box = await boxed(entry)
    await handIn(box).expect(200)
    await handIn(box).expect(200)
    expect(await isInLedger(entry.id)).toBe(true)
    expect((await tray()).some(({ id }) => id === entry.id)).toBe(false)
  })

  it('of what had arrived before the tablet was put out stays in the ledger and out of the tray', async () => {
    const lost = await shop.tablet()
    const entry = seen()
    const box = await boxed(entry, lost)
    const parcel = signedParcel(lost.key, lost.deviceId, { staffId: people.ines.id, entries: [entry] })
    await lost.post('/api/bay/parcels', parcel).expect(200)
    await putOut(shop, lost.deviceId)
    await handIn(box).expect(200)
    expect((await tray()).some(({ id }) => id === entry.id)).toBe(false)
  })

  it('is not taken from anyone but one of the tablets, and says the same whatever is wrong', async () => {
    const entry = seen()
    const forged = await boxed(entry, tablet, { key: makeTabletKey() })
    const elsewhere = await boxed(entry, tablet, { to: await otherSealingKey() })
    const unknown = await boxed(entry, { ...tablet, deviceId: randomUUID() })
    const noise = Buffer.alloc(300, 7).toString('base64')
    const noParcel = await sealBox(shop.parts.sealing.publicKey, '{"deviceId":1}')
    const noJson = await sealBox(shop.parts.sealing.publicKey, 'hello')
    const answers = []
    for (const box of [forged, elsewhere, unknown, noise, noParcel, noJson]) {
      const { body } = await handIn(box).expect(409)
      answers.push(`${body.code} ${body.detail}`)
    }
    expect(new Set(answers).size).toBe(1)
    expect(await isInLedger(entry.id)).toBe(false)
    expect((await tray()).some(({ id }) => id === entry.id)).toBe(false)
  })

  it('stays on the tablet where the order takes nothing now', async () => {
    await handIn(await boxed({ ...seen(), version: 99 })).expect(409)
  })

  it('has a size that is bounded', async () => {
    await handIn('A'.repeat(1_000_001)).expect(422)
    await handIn('A'.repeat(1_100_000)).expect(413)
  })
})
