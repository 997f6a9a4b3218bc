import * as contract from '@bayledger/contract/numbers'
import { type Binding, bind } from '../../http/binding.ts'
import { getNumbers } from './service.ts'

export const numberRoutes: readonly Binding[] = [
  bind(contract.getNumbers)(async ({ deps, query }) => ({
    status: 200,
    body: await getNumbers(deps, query),
  })),
]
