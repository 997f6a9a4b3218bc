import * as contract from '@bayledger/contract/settings'
import type { Deps } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentInstrument } from './present.ts'
import * as store from './store.ts'

export const settingRoutes = (deps: Deps): Binding[] => [
  bind(contract.listInstruments)(async () => ({
    status: 200,
    body: { instruments: (await store.listInstruments(deps.prisma, deps.shopId)).map(presentInstrument) },
  })),
  bind(contract.getSettings)(async () => {
    const [shop, settings] = await Promise.all([
      store.findShop(deps.prisma, deps.shopId),
      store.listNewestSettings(deps.prisma, deps.shopId),
    ])
    return {
      status: 200,
      body: {
        shop: { shopId: shop.id, name: shop.name },
        locations: shop.locations.map((location) => ({
          locationId: location.id,
          name: location.name,
          altitudeFeet: location.altitudeFeet,
          timeZone: location.timeZone,
          lawProfile: location.lawProfile as Record<string, unknown>,
        })),
        settings: settings.map(({ kind, version, body }) => ({ kind, version, body })),
      },
    }
  }),
]
