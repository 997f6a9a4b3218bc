import { randomUUID } from 'node:crypto'
import { agreementOf, withProof } from '@bayledger/ledger/agreement'
import type { DraftOfKind } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import { namedOnly } from '@bayledger/ledger/second-person'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, replayOn, withPin } from '../support/replay-order.ts'

type Strike = DraftOfKind<'entry.struck'>

let shop: TestApp
let ines: Caller
let orderId: string
let removedId: string
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const { orderId: id, lines } = freshCopy(shop.demo, 'T-2603')
  orderId = id
  await replay.sendUntil(lines)
  removedId = lines.find(({ draft }) => draft.kind === 'wheel.removed')?.draft.id ?? ''
  ines = await replay.as('ines', 'bay')
})
afterAll(() => shop.stop())

/** The withdrawal of a wheel that came off, with a second person who has proven nothing yet. */
const strikeWith = (staffId: string): Strike => ({
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
const send = async (draft: Strike, by = ines) => {
  const { body } = await by.post('/api/entries', { entries: [envelopeOf(draft)], sides: [] }).expect(200)
  return body.results[0]
}
const prove = (draft: Strike, { id, pin }: { id: string; pin: string }, by = ines) =>
  by.post('/api/second-person', { staffId: id, pin, agreesTo: agreementOf(draft) })
const tokenFor = async (draft: Strike): Promise<string> =>
  (await prove(draft, people.greta).expect(201)).body.token
const unproven = { result: 'refused', code: 'SECOND_PERSON_UNPROVEN', kept: true }

describe('a second person', () => {
  it('who is only named is refused with words', async () => {
    const result = await send(strikeWith(people.greta.id))
    expect(result).toMatchObject(unproven)
    expect(result.words).toMatch(/PIN/)
  })

  it('who is only named by an older version of the program is refused with the same words', async () => {
    const draft = strikeWith(people.greta.id)
    const { body } = await ines
      .post('/api/entries', {
        entries: [
          {
            ...envelopeOf(draft),
            version: 1,
            payload: {
              entryId: removedId,
              reason: 'wrong-value',
              words: null,
              secondPersonId: people.greta.id,
            },
          },
        ],
        sides: [],
      })
      .expect(200)
    expect(body.results[0]).toMatchObject(unproven)
  })

  it('cannot be made up: a token that no PIN earned is refused', async () => {
    expect(await send(withProof(strikeWith(people.greta.id), 'A'.repeat(43)))).toMatchObject(unproven)
  })

  it('agrees to one entry only: its token is refused in another', async () => {
    const token = await tokenFor(strikeWith(people.greta.id))
    expect(await send(withProof(strikeWith(people.greta.id), token))).toMatchObject(unproven)
  })

  it('agrees to what the entry said: changed afterwards it is refused', async () => {
    const draft = strikeWith(people.greta.id)
    const token = await tokenFor(draft)
    const changed: Strike = { ...draft, payload: { ...draft.payload, reason: 'not-done' } }
    expect(await send(withProof(changed, token))).toMatchObject(unproven)
  })

  it('agrees for themself: the token of one person is refused under the name of another', async () => {
    const draft = strikeWith(people.greta.id)
    const token = await tokenFor(draft)
    const forged = { ...draft, payload: { ...draft.payload, secondPerson: namedOnly(people.bo.id) } }
    expect(await send(withProof(forged, token))).toMatchObject(unproven)
  })

  it('agrees for ten minutes', async () => {
    const draft = strikeWith(people.greta.id)
    const token = await tokenFor(draft)
    shop.clock.advance(10 * 60_000 + 1)
    expect(await send(withProof(draft, token))).toMatchObject(unproven)
  })

  it('is never the one who writes, at the desk or on a tablet', async () => {
    const { body } = await prove(strikeWith(people.ines.id), people.ines).expect(422)
    expect(body).toMatchObject({ code: 'SECOND_PERSON_REFUSED' })
    expect(await send(strikeWith(people.ines.id))).toMatchObject({ code: 'SECOND_PERSON_IS_DOER' })
  })

  it('has a role that may agree: an advisor cannot confirm that a wheel never came off', async () => {
    const { body } = await prove(strikeWith(people.devin.id), people.devin).expect(422)
    expect(body.detail).toContain('technician, lead, manager, owner')
    expect(await send(strikeWith(people.devin.id))).toMatchObject({ code: 'SECOND_PERSON_ROLE_NOT_ALLOWED' })
  })

  it('works here: someone who left cannot agree, with the right PIN or with a token from before', async () => {
    const draft = strikeWith(people.bo.id)
    const token = (await prove(draft, people.bo).expect(201)).body.token
    const active = (isActive: boolean) =>
      shop.deps.pool.query('update staff set active = $1 where id = $2', [isActive, people.bo.id])
    await active(false)
    await prove(strikeWith(people.bo.id), people.bo).expect(401)
    expect(await send(withProof(draft, token))).toMatchObject({ code: 'SECOND_PERSON_UNKNOWN' })
    await active(true)
  })

  it('has five tries at a PIN, on tablets and at the desk together, and they lock no password', async () => {
    const draft = strikeWith(people.marguerite.id)
    const places = [
      await (await shop.tablet()).signIn('bo'),
      await (await shop.tablet()).signIn('rufus'),
      await shop.desk('devin'),
    ] as const
    const wrong = { id: people.marguerite.id, pin: '000000' }
    for (let tries = 0; tries < 5; tries += 1)
      await prove(draft, wrong, places[tries % places.length]).expect(401)
    for (const place of places)
      expect((await prove(draft, people.marguerite, place).expect(429)).body.code).toBe('SIGN_IN_BLOCKED')
    await shop.desk('marguerite')
  })

  it('who typed their PIN for this very entry lets it through, once and for all', async () => {
    const draft = await withPin(ines, strikeWith(people.greta.id))
    const first = await send(draft as Strike)
    expect(first).toMatchObject({ result: 'accepted' })
    expect(await send(draft as Strike)).toEqual({ ...first, result: 'known' })
    const { rows } = await shop.deps.pool.query(
      'select staff_id, kind from second_person_proofs where entry_id = $1',
      [draft.id],
    )
    expect(rows).toEqual([{ staff_id: people.greta.id, kind: 'entry.struck' }])
  })

  it('leaves a proof that cannot be changed or removed', async () => {
    await expect(
      shop.deps.pool.query('update second_person_proofs set staff_id = $1', [people.bo.id]),
    ).rejects.toThrow()
    await expect(shop.deps.pool.query('delete from second_person_proofs')).rejects.toThrow()
  })
})
