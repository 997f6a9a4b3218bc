import { digestOf } from '@bayledger/ledger/digests'
import type { Draft } from '@bayledger/ledger/entry'
import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import { type Kind, type PayloadOf, versionOf } from '@bayledger/ledger/registry'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { v7 as newId } from 'uuid'
import { forShop } from '../../apps/api/src/deps.ts'
import { loadHistory } from '../../apps/api/src/features/entries/service/load-facts.ts'
import { loadLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { appendLine } from './append-line.ts'
import { freshCopy } from './fresh-copy.ts'
import { openOrderWriter } from './order-in-flight.ts'

/** What is written again of the demo's order: the complaint with its events, and what the bay read. */
const read: ReadonlySet<Kind> = new Set<Kind>([
  'complaint.recorded',
  'surroundings.recorded',
  'telltale.observed',
  'wheel.checked',
  'tire.inspected',
  'module.read',
])

/** Reads the vehicle of an open order as the bay read it in a demo order, and confirms what follows from that, now. */
export const readAndConfirm = async (serviceUrl: string, orderId: string, number: string): Promise<void> => {
  const writer = await openOrderWriter(serviceUrl)
  try {
    const demo = demoShop(new Date().toISOString())
    const deps = forShop(writer.parts, demo.shop.id)
    const { lines } = freshCopy(demo, number)
    const append = (line: DemoLine, draft: Draft) => {
      const at = new Date().toISOString()
      return appendLine(writer.parts, demo.shop.id, {
        ...line,
        draft: { ...draft, writtenAt: at } as Draft,
        receivedAt: at,
      })
    }
    const arrival = lines.slice(
      0,
      lines.findIndex(({ draft }) => draft.kind === 'diagnosis.issued'),
    )
    for (const line of arrival.filter(({ draft }) => read.has(draft.kind)))
      await append(line, { ...line.draft, orderId } as Draft)
    const bay = arrival.findLast(({ draft }) => draft.kind === 'tire.inspected')
    if (bay === undefined) throw new Error(`${number} has no tire that was looked at`)
    const write = async <K extends Kind>(kind: K, payload: PayloadOf<K>): Promise<string> => {
      const id = newId()
      const envelope = { ...bay.draft, id, orderId, restsOn: [], version: versionOf(kind) }
      await append({ ...bay, sides: [] }, { ...envelope, kind, payload } as unknown as Draft)
      return id
    }
    const { state } = await loadLedger(deps, orderId)
    const evidence = evidenceOf(state, await loadHistory(deps, state))
    const diagnosisId = await write('diagnosis.issued', {
      ...{ evidence, diagnosis: diagnose(evidence), evidenceDigest: digestOf(evidence) },
    })
    await write('diagnosis.confirmed', { diagnosisId, verdict: { agrees: true } })
  } finally {
    await writer.close()
  }
}
