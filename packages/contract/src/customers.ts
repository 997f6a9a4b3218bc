import { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'
import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Cursor, Id, line } from './identity.ts'

const content = {
  name: line(120),
  phone: z.nullable(
    z
      .string()
      .check(z.trim(), z.regex(/^[+()\d .-]{7,24}$/, '7 to 24 digits, spaces, points and the signs + ( ) -')),
  ),
  /** RFC 5321 4.5.3.1.3 leaves 254 for an address without its brackets. */
  email: z.nullable(z.email().check(z.maxLength(254))),
  mayText: z.boolean(),
  mayEmail: z.boolean(),
  mayCall: z.boolean(),
  /** In which language the customer's page, messages and report are. */
  language: CustomerLanguageCode,
}

export const CustomerContent = z.strictObject(content)
export type CustomerContent = z.infer<typeof CustomerContent>

/** `version` is what an edit names in `If-Match`. Telephone and e-mail are absent where the caller gets neither. */
export const Customer = z.strictObject({
  customerId: Id,
  version: z.int(),
  ...content,
  name: z.string(),
  phone: z.optional(content.phone),
  email: z.optional(content.email),
})
export type Customer = z.infer<typeof Customer>

const params = z.strictObject({ customerId: Id })

export const listCustomers = endpoint({
  operationId: 'listCustomers',
  summary:
    'Customers by name; `q` finds the first whose name, with or without its accents, or phone number begins or ends so.',
  method: 'GET',
  path: '/api/customers',
  access: { who: 'desk', roles: deskRoles },
  query: z.strictObject({ q: z.optional(z.string().check(z.maxLength(80))), cursor: z.optional(Cursor) }),
  replies: {
    200: z.strictObject({
      customers: z.array(Customer).check(z.maxLength(50)),
      next: z.nullable(z.string()),
    }),
  },
  problems: [],
})

export const createCustomer = endpoint({
  operationId: 'createCustomer',
  summary: 'Add a customer.',
  method: 'POST',
  path: '/api/customers',
  access: { who: 'desk', roles: deskRoles },
  once: true,
  body: CustomerContent,
  replies: { 201: Customer },
  problems: [],
})

export const getCustomer = endpoint({
  operationId: 'getCustomer',
  summary: 'One customer; ETag holds the version too.',
  method: 'GET',
  path: '/api/customers/:customerId',
  access: { who: 'desk', roles: deskRoles },
  params,
  replies: { 200: Customer },
  problems: ['CUSTOMER_NOT_FOUND'],
})

export const putCustomer = endpoint({
  operationId: 'putCustomer',
  summary: 'Save a customer; `If-Match` names the version that was read.',
  method: 'PUT',
  path: '/api/customers/:customerId',
  access: { who: 'desk', roles: deskRoles },
  ifMatch: true,
  params,
  body: CustomerContent,
  replies: { 200: Customer },
  problems: ['CUSTOMER_NOT_FOUND', 'RECORD_MERGED', 'CUSTOMER_ERASED'],
})
