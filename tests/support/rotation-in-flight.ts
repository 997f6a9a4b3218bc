import { authorizedBundles } from '@bayledger/ledger/questions/answers'
import { tireDangers } from '@bayledger/ledger/questions/tire-dangers'
import { versionOf } from '@bayledger/ledger/registry'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type { Step } from '@bayledger/reckoning/step'
import { v7 as newId } from 'uuid'
import { forShop } from '../../apps/api/src/deps.ts'
import { appendDraft } from '../../apps/api/src/features/entries/service/append-draft.ts'
import { loadLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { tabletId } from '../../prisma/seeds/demo/places.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { openOrderWriter } from './order-in-flight.ts'

/**
 * Writes an order of a pickup with five wheels alike, whose customer has agreed to work; the wheels then change places. No
 * estimate offers a rotation, so its plan is issued here, under what was agreed to, and worked on by Ines, on a tablet whose clock is so much
 * behind, before the first step that `until` names.
 */
export const writeRotation = async (
  serviceUrl: string,
  plate: string,
  pattern: RotationPattern,
  until: (step: Step) => boolean,
  minutesBehind: number,
): Promise<void> => {
  const writer = await openOrderWriter(serviceUrl)
  try {
    const orderId = await writer.write(
      { number: 'T-2604', plate },
      ({ draft }) => draft.kind === 'plan.issued',
    )
    const { shop } = demoShop(new Date().toISOString())
    const { state } = await loadLedger(forShop(writer.parts, shop.id), orderId)
    const [agreed] = authorizedBundles(state)
    const decision = state.marks.at(-1)
    if (!agreed || !decision || !state.sheet) throw new Error('nothing was agreed to')
    const { bundleKey } = agreed
    const works = [{ bundleKey, work: { kind: 'rotate' as const, pattern } }]
    const at = new Date(decision.receivedAt ?? decision.writtenAt)
    const issued = await appendDraft(
      forShop({ ...writer.parts, clock: { now: () => at } }, shop.id),
      {
        id: newId(),
        shopId: shop.id,
        orderId,
        kind: 'plan.issued',
        version: versionOf('plan.issued'),
        payload: {
          plan: planJob(state.sheet.sheet, works, 1, tireDangers(state)),
          decisionId: decision.entryId,
        },
        restsOn: [decision.entryId],
        writtenBy: { kind: 'system' },
        deviceId: null,
        writtenAt: decision.writtenAt,
      },
      { sides: [] },
    )
    if (!issued.admitted) throw new Error(`the plan is refused: ${JSON.stringify(issued)}`)
    await writer.workOn(orderId, until, { person: people.ines, deviceId: tabletId(4), minutesBehind })
  } finally {
    await writer.close()
  }
}
