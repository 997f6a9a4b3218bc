import * as contract from '@bayledger/contract/entries'
import { mayHaveMoney } from '../../core/sides-for.ts'
import { writerOf } from '../../core/writer.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentRefused, presentWithoutMoney } from './present.ts'
import { deliverEntries } from './service/deliver-entries.ts'
import { listRefused, readRefused, settleRefused } from './service/settle-refused.ts'

export const entryRoutes: readonly Binding[] = [
  bind(contract.appendEntries)(async ({ deps, actor, body }) => ({
    status: 200,
    body: { results: await deliverEntries(deps, writerOf(actor), body) },
  })),
  bind(contract.listRefusedEntries)(async ({ deps, actor }) => {
    const all = mayHaveMoney(actor)
    const { rows, isWhole } = await listRefused(deps, all ? null : actor.staffId)
    const refused = rows.map(all ? presentRefused : presentWithoutMoney)
    return { status: 200, body: { refused, isWhole } }
  }),
  bind(contract.getRefusedEntry)(async ({ deps, actor, params }) => {
    const all = mayHaveMoney(actor)
    const row = await readRefused(deps, params.entryId, all ? null : actor.staffId)
    return { status: 200, body: all ? presentRefused(row) : presentWithoutMoney(row) }
  }),
  bind(contract.settleRefusedEntry)(async ({ deps, params }) => {
    await settleRefused(deps, params.entryId)
    return { status: 204 }
  }),
]
