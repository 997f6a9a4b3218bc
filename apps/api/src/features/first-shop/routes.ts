import * as contract from '@bayledger/contract/first-shop'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const firstShopRoutes = (parts: Parts): Binding[] => [
  bind(contract.getFirstShop)(async ({ from }) => ({
    status: 200,
    body: await service.getFirstShop(parts, from),
  })),
  bind(contract.makeFirstShop)(async ({ from, body }) => ({
    status: 201,
    body: await service.makeFirstShop(parts, from, body),
  })),
]
