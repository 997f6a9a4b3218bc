import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** A customer's link as the desk sees it: never its secret. */
export const CustomerLink = z.strictObject({
  linkId: Id,
  createdAt: Instant,
  expiresAt: Instant,
  revokedAt: z.nullable(Instant),
  openedAt: z.array(Instant),
})
export type CustomerLink = z.infer<typeof CustomerLink>

const params = z.strictObject({ orderId: Id })

export const createLink = endpoint({
  operationId: 'createLink',
  summary: "Make the customer's link for an order; its secret is shown only in this reply.",
  method: 'POST',
  path: '/api/orders/:orderId/links',
  access: { who: 'desk', roles: deskRoles },
  params,
  replies: {
    201: z.strictObject({ linkId: Id, address: z.string(), secret: z.string(), expiresAt: Instant }),
  },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY'],
})

export const listLinks = endpoint({
  operationId: 'listLinks',
  summary: "An order's links, with when each was opened.",
  method: 'GET',
  path: '/api/orders/:orderId/links',
  access: { who: 'desk' },
  params,
  replies: { 200: z.strictObject({ links: z.array(CustomerLink) }) },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY'],
})

export const revokeLink = endpoint({
  operationId: 'revokeLink',
  summary: 'Withdraw a link; whoever holds it is shut out at once.',
  method: 'DELETE',
  path: '/api/orders/:orderId/links/:linkId',
  access: { who: 'desk' },
  params: z.strictObject({ orderId: Id, linkId: Id }),
  replies: { 204: null },
  problems: ['LINK_NOT_FOUND'],
})
