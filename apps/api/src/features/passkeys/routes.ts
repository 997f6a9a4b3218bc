import * as contract from '@bayledger/contract/passkeys'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { deskLimits, knownBrowserMs } from '../sessions/policy.ts'
import { presentSession } from '../sessions/present.ts'
import { presentPasskey } from './present.ts'
import * as service from './service.ts'

const browserCookie = (token: string) => ({ name: 'browser', token, seconds: knownBrowserMs / 1000 }) as const

export const passkeyRoutes = (parts: Parts): Binding[] => [
  bind(contract.challengeForSignIn)(async ({ body, tokenIn, from }) => {
    const { asked, browserToken } = await service.challengeForSignIn(
      parts,
      body.shopId,
      tokenIn('browser'),
      from,
    )
    return { status: 201, body: asked, cookies: [browserCookie(browserToken)] }
  }),
  bind(contract.signInByPasskey)(async ({ body, tokenIn, from }) => {
    const before = { browserToken: tokenIn('browser'), deskToken: tokenIn('desk') }
    const { token, session } = await service.signInByPasskey(parts, body, before, from)
    return {
      status: 201,
      body: presentSession(session, parts.clock.now()),
      cookies: [{ name: 'desk', token, seconds: deskLimits.absoluteMs / 1000 }],
    }
  }),
  bind(contract.challengeForProof)(async ({ deps, actor, from }) => ({
    status: 201,
    body: await service.challengeForProof(deps, actor, from),
  })),
  bind(contract.proveByPasskey)(async ({ deps, actor, body, from }) => {
    await service.proveByPasskey(deps, actor, body.passkey, from)
    return { status: 204 }
  }),
  bind(contract.challengeForPasskey)(async ({ deps, actor, from }) => ({
    status: 201,
    body: await service.challengeForPasskey(deps, actor, from),
  })),
  bind(contract.addPasskey)(async ({ deps, actor, body, from }) => ({
    status: 201,
    body: presentPasskey(await service.addPasskey(deps, actor, body, from)),
  })),
  bind(contract.listPasskeys)(async ({ deps, actor, params }) => ({
    status: 200,
    body: { passkeys: (await service.listPasskeys(deps, actor, params.id)).map(presentPasskey) },
  })),
  bind(contract.removePasskey)(async ({ deps, actor, params: { id, passkeyId } }) => {
    await service.removePasskey(deps, actor, { staffId: id, passkeyId })
    return { status: 204 }
  }),
]
