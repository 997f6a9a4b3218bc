import { openLink } from '@bayledger/contract/customer-face'
import * as contract from '@bayledger/contract/links'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { openedMs } from './policy.ts'
import { presentLink } from './present.ts'
import * as service from './service.ts'

export const linkRoutes = (parts: Parts): Binding[] => [
  bind(contract.createLink)(async ({ deps, actor, params }) => ({
    status: 201,
    body: await service.createLink(deps, actor, params.orderId),
  })),
  bind(contract.listLinks)(async ({ deps, params }) => ({
    status: 200,
    body: { links: (await service.listLinks(deps, params.orderId)).map(presentLink) },
  })),
  bind(contract.revokeLink)(async ({ deps, actor, params }) => {
    await service.revokeLink(deps, actor, params.orderId, params.linkId)
    return { status: 204 }
  }),
  bind(openLink)(async ({ body }) => {
    const { token, expiresAt } = await service.openLink(parts, body.secret)
    return {
      status: 201,
      body: { expiresAt: expiresAt.toISOString() },
      cookies: [{ name: 'customer', token, seconds: openedMs / 1000 }],
    }
  }),
]
