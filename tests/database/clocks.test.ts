import { openPool } from '@bayledger/db/pool'
import type { Draft } from '@bayledger/ledger/entry'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import type { Pool } from 'pg'
import { v7 as newId } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Deps, forShop } from '../../apps/api/src/deps.ts'
import { appendDraft } from '../../apps/api/src/features/entries/service/append-draft.ts'
import { loadLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { demoNow, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'

let shop: TestApp
let otherPool: Pool
beforeAll(async () => {
  shop = await startTestApp()
  otherPool = openPool({ url: shop.url, size: 2, onIdleError: () => undefined })
})
afterAll(async () => {
  await otherPool.end()
  await shop.stop()
})

/** A process on the shop's database whose clock differs from the demo's moment by so much. */
const processAt = (pool: Pool, minutes: number): Deps =>
  forShop(
    {
      ...shop.parts,
      pool,
      clock: { now: () => new Date(Date.parse(demoNow) + minutes * 60_000) },
    },
    shop.demo.shop.id,
  )

const assignment = (orderId: string, bay: number): Draft => ({
  id: newId(),
  shopId: shop.demo.shop.id,
  orderId,
  kind: 'order.assigned',
  version: 1,
  payload: { staffId: null, bay },
  restsOn: [],
  writtenBy: { kind: 'staff', staffId: people.ottoline.id },
  deviceId: null,
  writtenAt: demoNow,
})

describe('two processes with different clocks', () => {
  it('never let the time of receipt run backwards within an order, and keep its chain whole', async () => {
    const ahead = processAt(shop.deps.pool, 30)
    const behind = processAt(otherPool, -30)
    const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
    const opening = lines[0]
    if (!opening) throw new Error('an order without a first line')
    expect(await appendDraft(ahead, opening.draft, { sides: [] })).toMatchObject({ admitted: true })
    for (const [deps, bay] of [
      [behind, 1],
      [ahead, 2],
      [behind, 3],
    ] as const)
      expect(await appendDraft(deps, assignment(orderId, bay), { sides: [] })).toMatchObject({
        admitted: true,
      })
    const { entries } = await loadLedger(behind, orderId)
    const received = entries.map(({ receivedAt }) => receivedAt)
    expect(received).toEqual(received.toSorted())
    expect(entries.map(({ seq }) => seq)).toEqual([1, 2, 3, 4])
    expect(verifyChain(entries)).toEqual({ whole: true })
  })

  it('keep an entry whose device is a year ahead, with a hold that the desk settles', async () => {
    const now = processAt(shop.deps.pool, 0)
    const { orderId, lines } = freshCopy(shop.demo, 'T-2603')
    const opening = lines[0]
    if (!opening) throw new Error('an order without a first line')
    await appendDraft(now, opening.draft, { sides: [] })
    const late = { ...assignment(orderId, 1), writtenAt: '2027-01-12T16:40:00.000Z' }
    const kept = await appendDraft(now, late, { sides: [] })
    expect(kept).toMatchObject({
      admitted: true,
      entry: { given: { holds: [{ code: 'device-clock-doubtful', gate: 'seal' }] } },
    })
    expect((await loadLedger(now, orderId)).state.holds).toHaveLength(1)
  })
})
