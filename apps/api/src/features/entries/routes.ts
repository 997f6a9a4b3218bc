import * as contract from '@bayledger/contract/entries'
import { mayHaveMoney } from '../../core/sides-for.ts'
import { writerOf } from '../../core/writer.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentRefused, presentWithoutMoney } from './present.ts'
import { deliverEntries } from './service/deliver-entries.ts'
import { listRefused, settleRefused } from './service/settle-refused.ts'

export const entryRoutes: readonly Binding[] = [
  bind(contract.appendEntries)(async ({ deps, actor, body }) => ({
    status: 200,
    body: { results: await deliverEntries(deps, writerOf(actor), body) },
  })),
  bind(contract.listRefusedEntries)(async ({ deps, actor }) => {
    const all = mayHaveMoney(actor)
    const rows = await listRefused(deps, all ? null : actor.staffId)
    return { status: 200, body: { refused: rows.map(all ? presentRefused : presentWithoutMoney) } }
  }),
  bind(contract.settleRefusedEntry)(async ({ deps, params }) => {
    await settleRefused(deps, params.entryId)
    return { status: 204 }
  }),
]
