import * as contract from '@bayledger/contract/comebacks'
import { type Binding, bind } from '../../http/binding.ts'
import { getComeback } from './service.ts'

export const comebackRoutes: readonly Binding[] = [
  bind(contract.getComeback)(async ({ deps, params }) => ({
    status: 200,
    body: { comeback: await getComeback(deps, params.orderId) },
  })),
]
