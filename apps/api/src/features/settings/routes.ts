import * as contract from '@bayledger/contract/settings'
import { mayHaveMoney } from '../../core/sides-for.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentLocation } from './present.ts'
import * as service from './service.ts'

export const settingRoutes: readonly Binding[] = [
  bind(contract.listInstruments)(async ({ deps }) => ({
    status: 200,
    body: { instruments: await service.listInstruments(deps) },
  })),
  bind(contract.listStock)(async ({ deps }) => ({
    status: 200,
    body: { parts: await service.listStock(deps) },
  })),
  bind(contract.getSettings)(async ({ deps, actor }) => {
    const { shop, settings } = await service.getSettings(deps)
    return {
      status: 200,
      body: {
        shop: { shopId: shop.id, name: shop.name },
        locations: shop.locations.map(presentLocation),
        settings: settings
          .filter(({ kind }) => kind !== 'prices' || mayHaveMoney(actor))
          .map(({ kind, version, body }) => ({ kind, version, body })),
      },
    }
  }),
]
