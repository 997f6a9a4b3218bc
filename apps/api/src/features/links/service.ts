import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { noteSecurityEvent } from '../../core/security-events.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import { type Deps, forShop, type Parts } from '../../deps.ts'
import { getLedger } from '../orders/service.ts'
import { linkMs, openedMs } from './policy.ts'
import * as store from './store.ts'

/** The secret is behind the #, which no browser sends, so it is in no log and no Referer. */
export const linkAddress = (deps: Deps, secret: string): string => `${deps.publicAddress}/customer#${secret}`

export const createLink = async (deps: Deps, actor: StaffActor, orderId: string) => {
  await getLedger(deps, orderId)
  const secret = newToken()
  const linkId = newId()
  const createdAt = deps.clock.now()
  const expiresAt = new Date(createdAt.getTime() + linkMs)
  await store.insertLink(deps, {
    id: linkId,
    orderId,
    tokenHash: tokenDigest(secret),
    createdAt,
    expiresAt,
    staffId: actor.staffId,
  })
  return { linkId, secret, address: linkAddress(deps, secret), expiresAt: expiresAt.toISOString() }
}

/**
 * Makes the link that a message names, or finds it made at an earlier try. `false`: it was withdrawn since.
 */
export const openLinkOfMessage = async (
  deps: Deps,
  link: { readonly id: string; readonly orderId: string; readonly secret: string; readonly madeBy: object },
): Promise<boolean> => {
  const createdAt = deps.clock.now()
  const { secret, ...named } = link
  return store.upsertLink(deps, {
    ...named,
    tokenHash: tokenDigest(secret),
    createdAt,
    expiresAt: new Date(createdAt.getTime() + linkMs),
  })
}

export const listLinks = async (deps: Deps, orderId: string): Promise<store.LinkRow[]> => {
  await getLedger(deps, orderId)
  return store.listLinks(deps, orderId)
}

export const revokeLink = async (
  deps: Deps,
  { staffId }: StaffActor,
  orderId: string,
  linkId: string,
): Promise<void> => {
  if (!(await store.markRevoked(deps, orderId, linkId))) throw new AppError({ code: 'LINK_NOT_FOUND' })
  await noteSecurityEvent(deps, deps.prisma, { kind: 'link-withdrawn', staffId, details: { orderId } })
}

/** Exchanges a link's secret for a session of that phone. The reply never says why a link does not open. */
export const openLink = async (parts: Parts, secret: string): Promise<{ token: string; expiresAt: Date }> => {
  const link = await store.findOpenLink(parts, tokenDigest(secret))
  if (!link) throw new AppError({ code: 'LINK_REFUSED' })
  const token = newToken()
  const expiresAt = new Date(Math.min(parts.clock.now().getTime() + openedMs, link.expiresAt.getTime()))
  await store.insertOpening(forShop(parts, link.shopId), {
    id: newId(),
    linkId: link.id,
    tokenHash: tokenDigest(token),
    expiresAt,
  })
  return { token, expiresAt }
}
