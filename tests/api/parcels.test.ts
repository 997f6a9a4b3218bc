import { randomUUID } from 'node:crypto'
import type { DraftEnvelope } from '@bayledger/ledger/entry'
import { sessionText } from '@bayledger/ledger/tablet-signing'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { cookiesIn, type TestApp, type TestTablet } from '../support/app.ts'
import { type ParcelShop, startParcelShop } from '../support/parcel-shop.ts'
import { putOut } from '../support/put-out.ts'
import { makeTabletKey, signedParcel } from '../support/tablet-key.ts'

let shop: TestApp
let tablet: TestTablet
let seen: ParcelShop['seen']
let ledger: ParcelShop['ledger']
let allInTray: ParcelShop['tray']
beforeAll(async () => {
  const started = await startParcelShop()
  ;({ shop, tablet, seen, ledger, tray: allInTray } = started)
})
afterAll(() => shop.stop())

const handIn = (entries: readonly DraftEnvelope[], staffId: string = people.ines.id, by = tablet) =>
  by.post('/api/bay/parcels', signedParcel(by.key, by.deviceId, { staffId, entries: [...entries] }))
const tray = async (id: string) => (await allInTray()).find((refused) => refused.id === id)
const setActive = (staffId: string, isActive: boolean) =>
  shop.deps.pool.query('update staff set active = $1 where id = $2', [isActive, staffId])

describe('a parcel of a tablet', () => {
  it('is written as by its person on this tablet, with nobody signed in there', async () => {
    const entry = seen()
    const { body } = await handIn([entry]).expect(200)
    expect(body.results).toMatchObject([{ result: 'accepted', id: entry.id }])
    expect((await ledger()).find(({ id }) => id === entry.id)).toMatchObject({
      writtenBy: { kind: 'staff', staffId: people.ines.id },
      deviceId: tablet.deviceId,
    })
  })

  it('is written as by its person whoever is signed in there', async () => {
    const entry = seen()
    const bo = await tablet.signIn('bo')
    await handIn([entry], people.ines.id, { ...tablet, ...bo }).expect(200)
    expect((await ledger()).find(({ id }) => id === entry.id)?.writtenBy).toEqual({
      kind: 'staff',
      staffId: people.ines.id,
    })
  })

  it('is harmless when it comes twice, or came before under the person’s own session', async () => {
    const [first, second] = [seen(), seen()]
    await handIn([first]).expect(200)
    expect((await handIn([first]).expect(200)).body.results[0].result).toBe('known')
    const ines = await tablet.signIn('ines')
    await ines.post('/api/entries', { entries: [second], sides: [] }).expect(200)
    expect((await handIn([second]).expect(200)).body.results[0].result).toBe('known')
    expect((await ledger()).filter(({ id }) => id === second.id).length).toBe(1)
  })

  it('keeps what the ledger refuses, with its reason, for its writer and the desk', async () => {
    const entry = { ...seen(), restsOn: [randomUUID()] }
    const { body } = await handIn([entry]).expect(200)
    expect(body.results[0]).toMatchObject({ result: 'refused', code: 'ENTRY_RESTS_ON_UNKNOWN', kept: true })
    expect(await tray(entry.id)).toMatchObject({ writtenBy: { kind: 'staff', staffId: people.ines.id } })
  })

  it('is answered "not yet" where a newer program wrote it', async () => {
    const { body } = await handIn([{ ...seen(), version: 99 }]).expect(200)
    expect(body.results[0].result).toBe('not-yet')
  })

  it('has to wait where it follows something that does, so that nothing overtakes it', async () => {
    const [first, newer, last] = [seen(), { ...seen(), version: 99 }, seen()]
    const { body } = await handIn([first, newer, last]).expect(200)
    expect(body.results.map(({ id, result }: { id: string; result: string }) => [id, result])).toEqual([
      [first.id, 'accepted'],
      [newer.id, 'not-yet'],
      [last.id, 'not-yet'],
    ])
    expect((await ledger()).some(({ id }) => id === last.id)).toBe(false)
    expect((await handIn([last]).expect(200)).body.results[0].result).toBe('accepted')
  })

  it('takes nothing that only the desk may write', async () => {
    const entry = { ...seen(), kind: 'order.opened', version: 1, payload: {} }
    const { body } = await handIn([entry]).expect(200)
    expect(body.results[0].result).toBe('refused')
  })

  it('is refused under another name than the tablet signed for', async () => {
    const parcel = signedParcel(tablet.key, tablet.deviceId, { staffId: people.ines.id, entries: [seen()] })
    const { body } = await tablet
      .post('/api/bay/parcels', { ...parcel, staffId: people.greta.id })
      .expect(422)
    expect(body).toMatchObject({ code: 'SIGNATURE_REFUSED' })
    expect((await ledger()).some(({ id }) => id === parcel.entries[0]?.id)).toBe(false)
  })

  it('is refused when an entry was changed after it was signed, or another tablet signed it', async () => {
    const parcel = signedParcel(tablet.key, tablet.deviceId, { staffId: people.ines.id, entries: [seen()] })
    const [entry] = parcel.entries
    const changed = { ...parcel, entries: [{ ...entry, writtenAt: '2026-01-12T16:39:00.000Z' }] }
    await tablet.post('/api/bay/parcels', changed).expect(422)
    const other = await shop.tablet()
    await other.post('/api/bay/parcels', parcel).expect(422)
    const forged = signedParcel(makeTabletKey(), tablet.deviceId, parcel)
    await tablet.post('/api/bay/parcels', forged).expect(422)
  })

  it('of a person who left is kept with its reason and not written', async () => {
    const entry = seen()
    await setActive(people.bo.id, false)
    const { body } = await handIn([entry], people.bo.id).expect(200)
    await setActive(people.bo.id, true)
    expect(body.results[0]).toMatchObject({ result: 'refused', code: 'WRITER_NOT_ACTIVE', kept: true })
    expect(body.results[0].words).toMatch(/no longer works here/)
    expect(await tray(entry.id)).toMatchObject({ code: 'WRITER_NOT_ACTIVE' })
  })

  it('of a person without the role is refused as at the desk', async () => {
    const { body } = await handIn([seen()], people.devin.id).expect(200)
    expect(body.results[0]).toMatchObject({ result: 'refused', code: 'ROLE_NOT_ALLOWED' })
  })

  it('is taken from no desk, from nobody, and from no tablet that was put out', async () => {
    const entry = seen()
    const parcel = signedParcel(tablet.key, tablet.deviceId, { staffId: people.ines.id, entries: [entry] })
    const desk = await shop.desk('ottoline')
    expect((await desk.post('/api/bay/parcels', parcel).expect(401)).body.code).toBe('DEVICE_UNKNOWN')
    await shop.nobody.post('/api/bay/parcels', parcel).expect(401)
    const lost = await shop.tablet()
    const bo = await lost.signIn('bo')
    await putOut(shop, lost.deviceId)
    const onLost = signedParcel(lost.key, lost.deviceId, { staffId: people.ines.id, entries: [entry] })
    for (const caller of [lost, bo]) {
      const { body } = await caller.post('/api/bay/parcels', onLost, { 'bayledger-face': 'bay' }).expect(401)
      expect(body).toMatchObject({ code: 'DEVICE_UNKNOWN' })
    }
    expect((await ledger()).some(({ id }) => id === entry.id)).toBe(false)
  })
})

describe('the key of a tablet', () => {
  const enrolledWithout = async () => {
    const desk = await shop.desk('ottoline')
    const { body } = await desk.post('/api/enrollment-codes', { locationId: shop.demo.home.id }).expect(201)
    const enrolled = await shop.nobody.post('/api/devices', { code: body.code, name: 'Bay 4' }).expect(201)
    expect(enrolled.body.hasKey).toBe(false)
    return { cookies: cookiesIn(enrolled), deviceId: enrolled.body.deviceId as string }
  }
  const signedIn = async (cookies: readonly string[]) => {
    const { id, pin } = people.ines
    const reply = await shop.withCookies(cookies).post('/api/sessions/bay', { staffId: id, pin }).expect(201)
    return shop.withCookies([...cookies, ...cookiesIn(reply)])
  }

  it('is registered once, by somebody who is signed in on it', async () => {
    const { cookies, deviceId } = await enrolledWithout()
    const { publicKey } = makeTabletKey()
    const asked = { publicKey }
    await shop.withCookies(cookies).post('/api/devices/current/key', asked).expect(401)
    const caller = await signedIn(cookies)
    const { body } = await caller.post('/api/devices/current/key', asked).expect(200)
    expect(body).toMatchObject({ deviceId, hasKey: true })
    await caller.post('/api/devices/current/key', asked).expect(200)
    const other = await caller.post('/api/devices/current/key', { publicKey: makeTabletKey().publicKey })
    expect(other.body.code).toBe('DEVICE_KEY_TAKEN')
  })

  it('is a point of P-256 and nothing else', async () => {
    const { cookies } = await enrolledWithout()
    const caller = await signedIn(cookies)
    const publicKey = `${'A'.repeat(122)}==`
    const { body } = await caller.post('/api/devices/current/key', { publicKey }).expect(422)
    expect(body).toMatchObject({ code: 'FIELDS_INVALID', fields: [{ field: 'publicKey' }] })
  })

  it('signs nothing before it is registered', async () => {
    const { cookies, deviceId } = await enrolledWithout()
    const parcel = signedParcel(makeTabletKey(), deviceId, { staffId: people.ines.id, entries: [seen()] })
    const { body } = await shop.withCookies(cookies).post('/api/bay/parcels', parcel).expect(422)
    expect(body.code).toBe('SIGNATURE_REFUSED')
    expect(body.detail).toMatch(/holds no key/)
  })

  it('cannot be changed or removed', async () => {
    await expect(
      shop.deps.pool.query(`update device_keys set public_key = repeat('A', 124)`),
    ).rejects.toThrow()
    await expect(shop.deps.pool.query('delete from device_keys')).rejects.toThrow()
  })
})

describe('what the server tells a tablet', () => {
  const current = async () => (await tablet.get('/api/devices/current').expect(200)).body

  it('is its key for sealing, its time, the owner’s hours, and no digest of a PIN', async () => {
    const device = await current()
    expect(device).toMatchObject({ sealingKey: shop.parts.sealing.publicKey, offlineHours: 72, hasKey: true })
    expect(device.now).toBe(shop.clock.now().toISOString())
    for (const pin of device.pins) expect(Object.keys(pin).toSorted()).toEqual(['staffId', 'version'])
  })

  it('says which PINs changed and who left', async () => {
    const versionOf = async (staffId: string) =>
      (await current()).pins.find((pin: { staffId: string }) => pin.staffId === staffId)?.version
    const before = await versionOf(people.bo.id)
    const pinHash = await shop.hashPassword('135790')
    await shop.deps.pool.query('update staff set pin_hash = $1 where id = $2', [pinHash, people.bo.id])
    expect(await versionOf(people.bo.id)).toBe(before + 1)
    await setActive(people.bo.id, false)
    expect(await versionOf(people.bo.id)).toBeUndefined()
    await setActive(people.bo.id, true)
  })
})

describe('a person whose PIN the tablet checked while the server was out of reach', () => {
  const asked = (given: Partial<{ staffId: string; pinVersion: number; at: string }> = {}, by = tablet) => {
    const content = {
      staffId: people.greta.id,
      pinVersion: 1,
      at: shop.clock.now().toISOString(),
      ...given,
    }
    const signature = by.key.sign(sessionText({ deviceId: by.deviceId, ...content }))
    return { ...content, signature }
  }
  const resume = (body: object, by = tablet) => by.post('/api/sessions/bay/resumed', body)

  it('goes on with the server without typing it again, because the tablet vouches for it', async () => {
    const reply = await resume(asked()).expect(201)
    expect(reply.body).toMatchObject({ kind: 'bay', staff: { staffId: people.greta.id }, pinVersion: 1 })
    const greta = shop.withCookies([...tablet.cookies, ...cookiesIn(reply)])
    await greta.get('/api/floor').expect(200)
  })

  it('signs in anew where the PIN changed since, or they left', async () => {
    expect((await resume(asked({ pinVersion: 7 })).expect(401)).body.code).toBe('PIN_REFUSED')
    await setActive(people.greta.id, false)
    await resume(asked()).expect(401)
    await setActive(people.greta.id, true)
  })

  it('is not somebody else, and not vouched for by another tablet or for another time', async () => {
    await resume({ ...asked(), staffId: people.ottoline.id }).expect(422)
    const other = await shop.tablet()
    await resume(asked({}, other)).expect(422)
    const old = asked()
    shop.clock.advance(5 * 60_000 + 1)
    expect((await resume(old).expect(401)).body.code).toBe('SESSION_EXPIRED')
  })

  it('does not take the tablet from whoever signed in there meanwhile', async () => {
    const late = asked()
    shop.clock.advance(1_000)
    const { id, pin } = people.ines
    const reply = await tablet.post('/api/sessions/bay', { staffId: id, pin }).expect(201)
    expect((await resume(late).expect(401)).body.code).toBe('SESSION_EXPIRED')
    const ines = shop.withCookies([...tablet.cookies, ...cookiesIn(reply)])
    expect((await ines.get('/api/sessions/current').expect(200)).body.staff.staffId).toBe(id)
  })

  it('is told the version of their PIN when they sign in with the server', async () => {
    const { id, pin } = people.ines
    const { body } = await tablet.post('/api/sessions/bay', { staffId: id, pin }).expect(201)
    expect(body.pinVersion).toBe(1)
  })
})
