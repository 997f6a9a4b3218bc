import { getChecklist } from '@bayledger/contract/checklist'
import { type Binding, bind } from '../../http/binding.ts'
import { countShop } from './store.ts'

export const checklistRoutes: readonly Binding[] = [
  bind(getChecklist)(async ({ deps }) => {
    const { working, bay, wrenches, gauges, ...rest } = await countShop(deps)
    return {
      status: 200,
      body: {
        people: { working, bay },
        instruments: { wrenches, gauges },
        pricesVersion: rest.prices_version,
        tablets: rest.tablets,
        backups: deps.backups(),
        hasOrders: rest.has_orders,
      },
    }
  }),
]
