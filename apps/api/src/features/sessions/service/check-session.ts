import type { FoundSession } from '../../../core/actor.ts'
import { forShop, type Parts } from '../../../deps.ts'
import { isOver } from '../policy.ts'
import * as store from '../store.ts'

/** How old `last seen` may get before it is written again: not every request writes. */
const seenEveryMs = 60_000

/** The session behind a token's digest; `over` once it was idle too long or has reached its end. */
export const checkSession = async (
  parts: Parts,
  tokenHash: string,
): Promise<FoundSession | 'over' | null> => {
  const session = await store.findSessionByToken(parts, tokenHash)
  if (!session) return null
  const now = parts.clock.now()
  if (isOver(session, now)) return 'over'
  if (now.getTime() - session.lastSeenAt.getTime() > seenEveryMs)
    await store.markSeen(forShop(parts, session.shopId), session.id, now)
  return {
    shopId: session.shopId,
    sessionId: session.id,
    kind: session.kind,
    staffId: session.staffId,
    name: session.staffName,
    roles: session.roles,
    deviceId: session.device?.deviceId ?? null,
    locationId: session.device?.locationId ?? null,
    expiresAt: session.expiresAt,
  }
}
