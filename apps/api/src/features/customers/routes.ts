import * as contract from '@bayledger/contract/customers'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const customerRoutes: readonly Binding[] = [
  bind(contract.listCustomers)(async ({ deps, actor, query }) => ({
    status: 200,
    body: await service.listCustomers(deps, actor, query),
  })),
  bind(contract.createCustomer)(async ({ deps, actor, once, body }) => {
    const customer = await service.createCustomer(deps, actor, once, body)
    return { status: 201, body: customer, headers: etag(customer) }
  }),
  bind(contract.getCustomer)(async ({ deps, params }) => {
    const customer = await service.getCustomer(deps, params.customerId)
    return { status: 200, body: customer, headers: etag(customer) }
  }),
  bind(contract.putCustomer)(async ({ deps, params, version, body }) => {
    const customer = await service.putCustomer(deps, params.customerId, version, body)
    return { status: 200, body: customer, headers: etag(customer) }
  }),
]
