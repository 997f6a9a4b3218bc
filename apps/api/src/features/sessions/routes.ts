import * as contract from '@bayledger/contract/sessions'
import type { Deps } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { bayLimits, deskLimits } from './policy.ts'
import { presentSession } from './present.ts'
import * as service from './service.ts'

export const sessionRoutes = (deps: Deps): Binding[] => [
  bind(contract.signInAtDesk)(async ({ body }) => {
    const { token, session } = await service.signInAtDesk(deps, body)
    return {
      status: 201,
      body: presentSession(session, deps),
      cookies: [{ name: 'desk', token, seconds: deskLimits.absoluteMs / 1000 }],
    }
  }),
  bind(contract.signInAtBay)(async ({ body, deviceToken }) => {
    const { token, session } = await service.signInAtBay(deps, deviceToken, body)
    return {
      status: 201,
      body: presentSession(session, deps),
      cookies: [{ name: 'bay', token, seconds: bayLimits.absoluteMs / 1000 }],
    }
  }),
  bind(contract.getSession)(async ({ actor }) => ({
    status: 200,
    body: presentSession(await service.getSession(deps, actor.sessionId), deps),
  })),
  bind(contract.signOut)(async ({ actor }) => {
    await service.signOut(deps, actor)
    return { status: 204, cookies: [{ name: actor.kind, token: '', seconds: 0 }] }
  }),
]
