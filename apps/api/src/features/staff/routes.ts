import * as contract from '@bayledger/contract/staff'
import { type Binding, bind } from '../../http/binding.ts'
import { presentStaff } from './present.ts'
import * as service from './service.ts'

export const staffRoutes = (): Binding[] => [
  bind(contract.listStaff)(async ({ deps }) => ({
    status: 200,
    body: { staff: (await service.listStaff(deps)).map(presentStaff) },
  })),
  bind(contract.proveSecondPerson)(async ({ deps, actor, body }) => ({
    status: 201,
    body: await service.proveSecondPerson(deps, actor, body),
  })),
]
