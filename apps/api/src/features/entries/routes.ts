import * as contract from '@bayledger/contract/entries'
import { AppError } from '../../core/app-error.ts'
import { mayHaveMoney } from '../../core/sides-for.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentRefused, presentWithoutMoney } from './present.ts'
import { deliverEntries } from './service/deliver-entries.ts'
import { listUnsettled, markSettled } from './store/refused-entries.ts'

export const entryRoutes: readonly Binding[] = [
  bind(contract.appendEntries)(async ({ deps, actor, body }) => ({
    status: 200,
    body: { results: await deliverEntries(deps, actor, body) },
  })),
  bind(contract.listRefusedEntries)(async ({ deps, actor }) => {
    const all = mayHaveMoney(actor)
    const rows = await listUnsettled(deps.pool, deps.shopId, all ? null : actor.staffId)
    return { status: 200, body: { refused: rows.map(all ? presentRefused : presentWithoutMoney) } }
  }),
  bind(contract.settleRefusedEntry)(async ({ deps, params }) => {
    if (!(await markSettled(deps.pool, deps.shopId, params.entryId, deps.clock.now())))
      throw new AppError('REFUSED_ENTRY_NOT_FOUND', 'Load the tray again; somebody may have settled it.')
    deps.live.wrote()
    return { status: 204 }
  }),
]
