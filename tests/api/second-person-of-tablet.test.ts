import { randomUUID } from 'node:crypto'
import { agreementOf, provenBy } from '@bayledger/ledger/agreement'
import type { DraftOfKind, Entry } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import { namedOnly } from '@bayledger/ledger/second-person'
import { agreementText } from '@bayledger/ledger/tablet-signing'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { startTestApp, type TestApp, type TestTablet } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, replayOn } from '../support/replay-order.ts'
import { faultOfAltered } from '../support/second-persons-held.ts'
import { signedParcel } from '../support/tablet-key.ts'

type Strike = DraftOfKind<'entry.struck'>

let shop: TestApp
let tablet: TestTablet
let other: TestTablet
let orderId: string
let removedId: string
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const { orderId: id, lines } = freshCopy(shop.demo, 'T-2603')
  orderId = id
  await replay.sendUntil(lines)
  removedId = lines.find(({ draft }) => draft.kind === 'wheel.removed')?.draft.id ?? ''
  tablet = await shop.tablet()
  other = await shop.tablet()
})
afterAll(() => shop.stop())

/** Ines withdraws a wheel that came off; somebody else agrees to it. */
const strikeWith = (staffId: string = people.greta.id): Strike => ({
  id: randomUUID(),
  shopId: shop.demo.shop.id,
  orderId,
  kind: 'entry.struck',
  version: versionOf('entry.struck'),
  payload: { entryId: removedId, reason: 'wrong-value', words: null, secondPerson: namedOnly(staffId) },
  writtenBy: { kind: 'staff', staffId: people.ines.id },
  deviceId: null,
  writtenAt: shop.clock.now().toISOString(),
  restsOn: [],
})
/** The same entry with the signature of a tablet that checked a PIN. */
const vouched = (draft: Strike, by = tablet, staffId: string = people.greta.id): Strike => {
  const agreement = agreementOf(draft)
  if (agreement === null) throw new Error('nobody agrees to this')
  const signature = by.key.sign(agreementText(agreement, { deviceId: by.deviceId, staffId }))
  return provenBy(draft, { how: 'tablet', deviceId: by.deviceId, signature })
}
const send = async (draft: Strike, by = tablet) => {
  const parcel = signedParcel(by.key, by.deviceId, {
    staffId: people.ines.id,
    entries: [{ ...envelopeOf(draft), restsOn: [] }],
  })
  const { body } = await by.post('/api/bay/parcels', parcel).expect(200)
  return body.results[0]
}
const unproven = { result: 'refused', code: 'SECOND_PERSON_UNPROVEN' }

describe('a second person for whose PIN a tablet vouches', () => {
  it('is not proven by a signature for another entry', async () => {
    const draft = strikeWith()
    const { payload } = vouched(strikeWith())
    expect(await send({ ...draft, payload })).toMatchObject(unproven)
  })

  it('is not proven for something else than they agreed to', async () => {
    const draft = vouched(strikeWith())
    const changed: Strike = { ...draft, payload: { ...draft.payload, reason: 'not-done' } }
    expect(await send(changed)).toMatchObject(unproven)
  })

  it('is not proven under the name of another', async () => {
    expect(await send(vouched(strikeWith(people.bo.id), tablet, people.greta.id))).toMatchObject(unproven)
  })

  it('is not proven by another tablet than the entry comes from', async () => {
    expect(await send(vouched(strikeWith(), other))).toMatchObject(unproven)
  })

  it('is not proven by a signature of another key', async () => {
    const forger = { ...tablet, key: other.key }
    expect(await send(vouched(strikeWith(), forger))).toMatchObject(unproven)
  })

  it('may not be the writer, and needs the role, as with the server', async () => {
    const { ines, devin } = people
    expect(await send(vouched(strikeWith(ines.id), tablet, ines.id))).toMatchObject({
      code: 'SECOND_PERSON_IS_DOER',
    })
    expect(await send(vouched(strikeWith(devin.id), tablet, devin.id))).toMatchObject({
      code: 'SECOND_PERSON_ROLE_NOT_ALLOWED',
    })
  })

  it('is proven for this entry, however long the network was away, once and for all', async () => {
    const draft = vouched(strikeWith())
    shop.clock.advance(3 * 60 * 60_000)
    expect(await send(draft)).toMatchObject({ result: 'accepted' })
    expect(await send(draft)).toMatchObject({ result: 'known' })
  })

  it('is verified with the record: another signature, another tablet and an unknown one are found', async () => {
    expect(await faultOfAltered(shop, orderId, (entry) => entry)).toBeNull()
    const altered = (change: (strike: Strike) => object) =>
      faultOfAltered(shop, orderId, (entry) =>
        isVouched(entry) ? ({ ...entry, payload: change(entry) } as Entry) : entry,
      )
    const byTablet = (deviceId: string) => (strike: Strike) => ({
      ...strike.payload,
      secondPerson: {
        ...strike.payload.secondPerson,
        proof: { ...strike.payload.secondPerson?.proof, deviceId },
      },
    })
    const notSigned = { what: 'the tablet that vouches for its second person did not sign this' }
    expect(await altered(({ payload }) => ({ ...payload, reason: 'not-done' }))).toMatchObject(notSigned)
    expect(await altered(byTablet(other.deviceId))).toMatchObject(notSigned)
    expect(await altered(byTablet(randomUUID()))).toMatchObject({
      what: 'the tablet that vouches for its second person has no key here',
    })
  })
})

const isVouched = (entry: Entry): entry is Entry & Strike =>
  entry.kind === 'entry.struck' && entry.payload.secondPerson?.proof?.how === 'tablet'
