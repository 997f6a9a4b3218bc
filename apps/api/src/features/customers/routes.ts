import * as contract from '@bayledger/contract/customers'
import { mayHaveContact } from '../../core/sides-for.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { withoutContact } from './present.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const customerRoutes: readonly Binding[] = [
  bind(contract.listCustomers)(async ({ deps, actor, query }) => {
    const { customers, next } = await service.listCustomers(deps, actor, query)
    return {
      status: 200,
      body: { customers: mayHaveContact(actor) ? customers : customers.map(withoutContact), next },
    }
  }),
  bind(contract.createCustomer)(async ({ deps, actor, once, body }) => {
    const customer = await service.createCustomer(deps, actor, once, body)
    return { status: 201, body: customer, headers: etag(customer) }
  }),
  bind(contract.getCustomer)(async ({ deps, actor, params }) => {
    const customer = await service.getCustomerFor(deps, actor, params.customerId)
    return { status: 200, body: customer, headers: etag(customer) }
  }),
  bind(contract.putCustomer)(async ({ deps, params, version, body }) => {
    const customer = await service.putCustomer(deps, params.customerId, version, body)
    return { status: 200, body: customer, headers: etag(customer) }
  }),
]
