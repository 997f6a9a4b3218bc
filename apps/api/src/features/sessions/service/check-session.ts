import type { FoundSession } from '../../../core/actor.ts'
import type { Deps } from '../../../deps.ts'
import { isOver } from '../policy.ts'
import * as store from '../store.ts'

/** How old `last seen` may get before it is written again: not every request writes. */
const seenEveryMs = 60_000

/** The session behind a token's digest; `over` once it was idle too long or has reached its end. */
export const checkSession = async (deps: Deps, tokenHash: string): Promise<FoundSession | 'over' | null> => {
  const session = await store.findSessionByToken(deps, tokenHash)
  if (!session) return null
  const now = deps.clock.now()
  if (isOver(session, now)) return 'over'
  if (now.getTime() - session.lastSeenAt.getTime() > seenEveryMs) await store.markSeen(deps, session.id, now)
  return {
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
