import * as contract from '@bayledger/contract/staff'
import { type Binding, bind } from '../../http/binding.ts'
import { presentStaff } from './present.ts'
import * as service from './service.ts'

export const staffRoutes = (): Binding[] => [
  bind(contract.listStaff)(async ({ deps }) => {
    const { staff, former } = await service.listStaff(deps)
    return {
      status: 200,
      body: {
        staff: staff.map(presentStaff),
        former: former.map(({ id, name }) => ({ staffId: id, name })),
      },
    }
  }),
  bind(contract.proveSecondPerson)(async ({ deps, actor, from, body }) => ({
    status: 201,
    body: await service.proveSecondPerson(deps, actor, from, body),
  })),
]
