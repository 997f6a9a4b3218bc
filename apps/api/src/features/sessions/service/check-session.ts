import type { FoundSession, SessionCall } from '../../../core/actor.ts'
import { forShop, type Parts } from '../../../deps.ts'
import { isOver } from '../policy.ts'
import * as store from '../store.ts'

/** How old `last seen` may get before it is written again: not every request writes. */
const seenEveryMs = 60_000

/** How many sessions are kept in memory: those of everyone at work in a chain of shops. */
const mostKept = 500

const kept = new WeakMap<object, Map<string, store.SessionRow>>()

/**
 * The session behind a token's digest; `over` once it was idle too long or has reached its end. `mayRecall`: one that
 * was read within the last minute is taken from memory, for a caller whose write checks it. What a desk reads by itself does
 * not keep it open: only what a person does there (`isAct`). A tablet locks its own screen.
 */
export const checkSession = async (
  parts: Parts,
  tokenHash: string,
  { mayRecall, isAct }: SessionCall,
): Promise<FoundSession | 'over' | null> => {
  const now = parts.clock.now()
  const recalled = mayRecall ? recall(parts, tokenHash, now) : null
  if (recalled) return presentSession(recalled)
  const session = await store.findSessionByToken(parts, tokenHash)
  if (!session) return null
  if (isOver(session, now)) return 'over'
  const isDue =
    (isAct || session.kind === 'bay') && now.getTime() - session.lastSeenAt.getTime() > seenEveryMs
  if (isDue) await store.markSeen(forShop(parts, session.shopId), session.id, now)
  // What it awaits may be done any moment.
  if (session.awaits === null) remember(parts, tokenHash, isDue ? { ...session, lastSeenAt: now } : session)
  return presentSession(session)
}

const recall = ({ pool }: Parts, tokenHash: string, now: Date): store.SessionRow | null => {
  const session = kept.get(pool)?.get(tokenHash)
  const isFresh =
    session !== undefined &&
    !isOver(session, now) &&
    Math.abs(now.getTime() - session.lastSeenAt.getTime()) <= seenEveryMs
  return isFresh ? session : null
}

const remember = ({ pool }: Parts, tokenHash: string, session: store.SessionRow): void => {
  const sessions = kept.get(pool) ?? new Map<string, store.SessionRow>()
  kept.set(pool, sessions)
  sessions.delete(tokenHash)
  sessions.set(tokenHash, session)
  const [oldest] = sessions.keys()
  if (sessions.size > mostKept && oldest !== undefined) sessions.delete(oldest)
}

const presentSession = (session: store.SessionRow): FoundSession => ({
  shopId: session.shopId,
  sessionId: session.id,
  kind: session.kind,
  staffId: session.staffId,
  name: session.staffName,
  roles: session.roles,
  deviceId: session.device?.deviceId ?? null,
  locationId: session.device?.locationId ?? null,
  expiresAt: session.expiresAt,
  provenAt: session.provenAt,
  awaits: session.awaits,
})
