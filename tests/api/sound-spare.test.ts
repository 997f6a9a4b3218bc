import { randomUUID } from 'node:crypto'
import type { Entry } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

/** A refusal with which the vehicle leaves on its spare, over HTTP: the server plans the spare, or says why there is none. */
let shop: TestApp
let replay: Replay
let bo: Caller
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  bo = await replay.as('bo', 'bay')
})
afterAll(() => shop.stop())

const refusesWith = (line: DemoLine | undefined): DemoLine => {
  if (line?.draft.kind !== 'refusal.recorded') throw new Error('the order has no refusal')
  return { ...line, draft: { ...line.draft, payload: { ...line.draft.payload, leaves: 'sound-spare' } } }
}
const isRefusal = ({ draft }: DemoLine): boolean => draft.kind === 'refusal.recorded'

const planOf = async (orderId: string): Promise<string[]> => {
  const { body } = await bo.get(`/api/orders/${orderId}`).expect(200)
  const plan = (body.entries as Entry[]).findLast(({ kind }) => kind === 'plan.issued')
  return plan?.kind === 'plan.issued' ? plan.payload.plan.steps.map(({ stepKey }) => stepKey) : []
}

const closes = async (orderId: string, stepKey: string): Promise<unknown> => {
  const entry = {
    id: randomUUID(),
    orderId,
    kind: 'step.closed',
    version: versionOf('step.closed'),
    payload: { stepKey, value: 'sound, no limits printed' },
    writtenAt: shop.clock.now().toISOString(),
    restsOn: [],
  }
  const { body } = await bo.post('/api/entries', { entries: [entry], sides: [] }).expect(200)
  return body.results[0]
}

describe('a refusal with which the vehicle leaves on its spare', () => {
  it('brings the steps for the spare into the plan, at the pressure of the place where a full-size one goes on', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2614')
    await replay.sendUntil(lines, isRefusal)
    expect(await planOf(orderId)).toEqual([])
    expect(await replay.send(refusesWith(lines.find(isRefusal)))).toMatchObject({ result: 'accepted' })
    const plan = await planOf(orderId)
    expect(plan).toEqual(expect.arrayContaining(['SP.wheel.out', 'LF.wheel.on', 'LF.studs.second-check']))
    expect(plan.filter((key) => key.endsWith('.pressure.set'))).toEqual(['LF.pressure.set'])
    expect(await closes(orderId, 'SP.wheel.out')).toMatchObject({ result: 'accepted' })
  })

  it('is refused where the spare is damaged too, with what to do', async () => {
    const { lines } = freshCopy(shop.demo, 'T-2614')
    await replay.sendUntil(lines, isRefusal)
    const seen = lines.find(({ draft }) => draft.kind === 'tire.inspected' && draft.payload.wheel === 'SP')
    if (seen?.draft.kind !== 'tire.inspected') throw new Error('nobody looked at the spare')
    const payload = { ...seen.draft.payload, tireDamage: ['bulge' as const] }
    expect(await replay.send({ ...seen, draft: { ...seen.draft, id: randomUUID(), payload } })).toMatchObject(
      {
        result: 'accepted',
      },
    )
    const refused = await replay.send(refusesWith(lines.find(isRefusal)))
    expect(refused).toMatchObject({ result: 'refused', code: 'SPARE_NOT_SOUND' })
    expect('words' in refused && refused.words).toMatch(/the spare is damaged.*towed/)
  })
})
