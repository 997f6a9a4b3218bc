import * as passkeys from '@bayledger/contract/passkeys'
import * as contract from '@bayledger/contract/sessions'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { bayLimits, deskLimits, knownBrowserMs } from './policy.ts'
import { presentOpenSession, presentSession } from './present.ts'
import * as open from './service/open-sessions.ts'
import * as passkeyService from './service/use-passkeys.ts'
import * as service from './service.ts'

export const sessionRoutes = (parts: Parts): Binding[] => [
  bind(contract.listShops)(async () => ({ status: 200, body: { shops: await service.listShops(parts) } })),
  bind(contract.signInAtDesk)(async ({ body, tokenIn, from }) => {
    const before = { browserToken: tokenIn('browser'), deskToken: tokenIn('desk') }
    const { token, session, browserToken } = await service.signInAtDesk(parts, body, before, from)
    return {
      status: 201,
      body: presentSession(session, parts.clock.now()),
      cookies: [
        { name: 'desk', token, seconds: deskLimits.absoluteMs / 1000 },
        { name: 'browser', token: browserToken, seconds: knownBrowserMs / 1000 },
      ],
    }
  }),
  bind(passkeys.challengeForSignIn)(async ({ body, tokenIn, from }) => {
    const { asked, browserToken } = await passkeyService.challengeForSignIn(
      parts,
      body.shopId,
      tokenIn('browser'),
      from,
    )
    return {
      status: 201,
      body: asked,
      cookies: [{ name: 'browser', token: browserToken, seconds: knownBrowserMs / 1000 }],
    }
  }),
  bind(passkeys.signInByPasskey)(async ({ body, tokenIn, from }) => {
    const before = { browserToken: tokenIn('browser'), deskToken: tokenIn('desk') }
    const { token, session } = await passkeyService.signInByPasskey(parts, body, before, from)
    return {
      status: 201,
      body: presentSession(session, parts.clock.now()),
      cookies: [{ name: 'desk', token, seconds: deskLimits.absoluteMs / 1000 }],
    }
  }),
  bind(contract.signInAtBay)(async ({ deps, body, tokenIn, from }) => {
    const { token, session, pinVersion } = await service.signInAtBay(deps, tokenIn('device'), body, from)
    return {
      status: 201,
      body: { ...presentSession(session, deps.clock.now()), pinVersion },
      cookies: [{ name: 'bay', token, seconds: bayLimits.absoluteMs / 1000 }],
    }
  }),
  bind(contract.resumeAtBay)(async ({ deps, actor, body, from }) => {
    const { token, session, pinVersion } = await service.resumeAtBay(deps, actor.deviceId, body, from)
    return {
      status: 201,
      body: { ...presentSession(session, deps.clock.now()), pinVersion },
      cookies: [{ name: 'bay', token, seconds: bayLimits.absoluteMs / 1000 }],
    }
  }),
  bind(contract.getSession)(async ({ deps, actor }) => ({
    status: 200,
    body: presentSession(await service.getSession(deps, actor.sessionId), deps.clock.now()),
  })),
  bind(contract.proveAgain)(async ({ deps, actor, body, from: { address } }) => {
    await open.proveAgain(deps, actor, { ...body, address })
    return { status: 204 }
  }),
  bind(contract.listSessions)(async ({ deps, actor, params }) => ({
    status: 200,
    body: {
      sessions: (await open.listSessions(deps, actor, params.id)).map((session) =>
        presentOpenSession(session, actor.sessionId),
      ),
    },
  })),
  bind(contract.endOneSession)(async ({ deps, actor, params: { id, sessionId } }) => {
    await open.endOneSession(deps, actor, { staffId: id, sessionId })
    return { status: 204 }
  }),
  bind(contract.endOtherSessions)(async ({ deps, actor, params }) => ({
    status: 200,
    body: { ended: await open.endOtherSessions(deps, actor, params.id) },
  })),
  bind(contract.signOut)(async ({ deps, actor }) => {
    await service.signOut(deps, actor)
    return { status: 204, cookies: [{ name: actor.kind, token: '', seconds: 0 }] }
  }),
]
