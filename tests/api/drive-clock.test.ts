import { randomBytes, randomUUID } from 'node:crypto'
import type { AppendResult, SentSide } from '@bayledger/contract/entries'
import { sideDigest } from '@bayledger/ledger/digests'
import { fold } from '@bayledger/ledger/fold'
import { openHolds } from '@bayledger/ledger/questions/open-holds'
import { proofOf } from '@bayledger/ledger/questions/proof'
import { type Kind, type PayloadOf, versionOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

/** A vehicle of whose proof drive 13 of 20 minutes are driven, over HTTP. */
let shop: TestApp
let bay: Caller
let desk: Caller
let orderId: string
const minute = 60_000

beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2610')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
  desk = await replay.as('ottoline', 'desk')
  bay = await replay.as('ines', 'bay')
})
afterAll(() => shop.stop())

const write = async <K extends Kind>(
  caller: Caller,
  kind: K,
  payload: PayloadOf<K>,
  sides: readonly SentSide[] = [],
): Promise<AppendResult & { readonly id: string }> => {
  const id = randomUUID()
  const entry = {
    id,
    orderId,
    kind,
    version: versionOf(kind),
    payload,
    writtenAt: shop.clock.now().toISOString(),
    restsOn: [],
  }
  const { body } = await caller.post('/api/entries', { entries: [entry], sides }).expect(200)
  return { ...body.results[0], id }
}

const read = async (): Promise<OrderState> =>
  fold((await desk.get(`/api/orders/${orderId}`).expect(200)).body.entries)

const stepKey = 'vehicle.proof.drive'
const miles = (value: number) => ({ value, unit: 'mi' as const })
const drive = async (
  minutes: number,
  timed: PayloadOf<'drive.done'>['timed'],
): Promise<AppendResult & { readonly id: string }> => {
  const at = (await read()).drives.at(-1)?.odometerIn.value ?? 0
  return write(bay, 'drive.done', {
    stepKey,
    minutes,
    odometerOut: miles(at),
    odometerIn: miles(at + 2),
    odometerConfirmed: false,
    lightAtEnd: 'off',
    lampCheckAfter: 'lights-and-goes-out',
    timed,
  })
}

describe('a proof drive', () => {
  it('that is longer than the order is old is refused with both figures, and nothing is driven', async () => {
    const before = (await read()).drives.length
    expect(await drive(590, null)).toMatchObject({
      result: 'refused',
      code: 'DRIVE_LONGER_THAN_ORDER',
      kept: true,
    })
    expect((await read()).drives).toHaveLength(before)
  })

  it('begins where the vehicle leaves, for everybody who reads the order', async () => {
    const at = (await read()).drives.at(-1)?.odometerIn ?? miles(0)
    expect(await write(bay, 'drive.left', { stepKey, odometerOut: at })).toMatchObject({ result: 'accepted' })
    expect((await read()).onTheRoad).toMatchObject({ stepKey, odometerOut: at })
  })

  it('of more minutes than the clock allows is kept as it was typed, and proves nothing', async () => {
    const startedAt = shop.clock.now().toISOString()
    shop.clock.advance(2 * minute)
    expect(await drive(9, { startedAt, seconds: 120 })).toMatchObject({ result: 'accepted' })
    const state = await read()
    expect(state.onTheRoad).toBeNull()
    expect(state.drives.at(-1)).toMatchObject({ minutes: 9, timed: { seconds: 120 } })
    expect(openHolds(state)).toMatchObject([
      { code: 'drive-minutes-doubtful', values: { typed: 9, clock: 2, by: 'timed' } },
    ])
    expect(proofOf(state)).toMatchObject({ verdict: 'not-yet-proven', why: 'drive-doubtful' })
  })

  it('whose minutes the desk has settled counts, and who settled it stays on record', async () => {
    const entryId = (await read()).drives.at(-1)?.written.entryId ?? ''
    const salt = randomBytes(32)
    const text = 'The tablet stayed on the bench.'
    const said = { digest: sideDigest(text, salt), salt: salt.toString('base64'), text }
    const settled = await write(desk, 'hold.settled', { entryId, words: said.digest }, [said])
    expect(settled).toMatchObject({ result: 'accepted' })
    const state = await read()
    expect(openHolds(state)).toEqual([])
    expect(state.settledHolds).toMatchObject([
      { hold: { values: { typed: 9, clock: 2 } }, words: said.digest, written: { entryId: settled.id } },
    ])
    expect(proofOf(state)).not.toMatchObject({ why: 'drive-doubtful' })
    expect(await write(desk, 'hold.settled', { entryId, words: said.digest }, [said])).toMatchObject({
      result: 'refused',
      code: 'HOLD_UNKNOWN',
    })
  })
})
