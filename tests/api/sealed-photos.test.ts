import { sealBox } from '@bayledger/ledger/sealed-box'
import { sealBytes } from '@bayledger/ledger/sealed-bytes'
import { photoText } from '@bayledger/ledger/tablet-signing'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp, type TestTablet } from '../support/app.ts'
import { begunOrder } from '../support/begun-order.ts'
import { attachedPhoto, drawnJpeg } from '../support/pictures.ts'
import { putOut } from '../support/put-out.ts'
import { makeTabletKey, otherSealingKey } from '../support/tablet-key.ts'
import type { WriteEntry } from '../support/write-entry.ts'

let shop: TestApp
let tablet: TestTablet
let ines: Caller
let orderId: string
let write: WriteEntry
beforeAll(async () => {
  shop = await startTestApp()
  const order = await begunOrder(shop, 'T-2603')
  ;({ orderId, write } = order)
  tablet = await shop.tablet()
  ines = await order.as('ines', 'bay')
})
afterAll(() => shop.stop())

let width = 300
/** A photo that no other test has, and an entry that names it. */
const attached = async () => {
  width += 1
  const bytes = await drawnJpeg({ width, height: 200 })
  const payload = attachedPhoto(bytes)
  expect(await write(ines, 'photo.attached', payload)).toMatchObject({ result: 'accepted' })
  return { bytes, digest: payload.digest }
}

/** A photo as a tablet's browser seals it. */
const sealed = async (
  { bytes, digest }: { readonly bytes: Buffer; readonly digest: string },
  by = tablet,
  { key = by.key, to = shop.parts.sealing, deviceId = by.deviceId } = {},
) => {
  const own = await sealBytes(new Uint8Array(bytes))
  const signature = key.sign(photoText({ deviceId, digest }))
  const box = await sealBox(to.publicKey, JSON.stringify({ deviceId, digest, key: own.key, signature }))
  return { box, bytes: Buffer.from(own.bytes).toString('base64') }
}
const handIn = (body: { readonly box: string; readonly bytes: string }) =>
  shop.nobody.post('/api/sealed-photos', body)
const isReceived = async (digest: string): Promise<boolean> => {
  const { body } = await ines.get(`/api/orders/${orderId}/photos`).expect(200)
  return body.received.includes(digest)
}

describe('a photo that was sealed to the server', () => {
  it('is kept and shown like any other, and is harmless when it comes twice', async () => {
    const photo = await attached()
    const body = await sealed(photo)
    expect((await handIn(body).expect(200)).body).toEqual({ received: true })
    expect(await isReceived(photo.digest)).toBe(true)
    await ines.get(`/api/orders/${orderId}/photos/${photo.digest}`).expect(200)
    await handIn(body).expect(200)
  })

  it('is taken from a tablet that was put out, where its entry had arrived before', async () => {
    const lost = await shop.tablet()
    const photo = await attached()
    const body = await sealed(photo, lost)
    await putOut(shop, lost.deviceId)
    await handIn(body).expect(200)
    expect(await isReceived(photo.digest)).toBe(true)
  })

  it('is not taken from anyone but one of the tablets, nor altered, and says the same whatever is wrong', async () => {
    const photo = await attached()
    const good = await sealed(photo)
    const other = await attached()
    const unnamed = attachedPhoto(await drawnJpeg({ width: 299, height: 200 })).digest
    const bodies = [
      await sealed(photo, tablet, { key: makeTabletKey() }),
      await sealed(photo, tablet, { to: await otherSealingKey() }),
      await sealed({ ...photo, digest: unnamed }),
      await sealed({ ...photo, digest: other.digest }),
      { ...good, bytes: (await sealed(photo)).bytes },
      { ...good, box: Buffer.alloc(300, 7).toString('base64') },
    ]
    const answers = []
    for (const body of bodies) {
      const reply = await handIn(body).expect(409)
      answers.push(`${reply.body.code} ${reply.body.detail}`)
    }
    expect(new Set(answers).size).toBe(1)
    expect(await isReceived(photo.digest)).toBe(false)
    expect(await isReceived(other.digest)).toBe(false)
  })

  it('has a size that is bounded', async () => {
    await handIn({ box: 'A'.repeat(5_000), bytes: 'AAAA' }).expect(422)
    await handIn({ box: 'A'.repeat(200), bytes: '***' }).expect(422)
  })
})
