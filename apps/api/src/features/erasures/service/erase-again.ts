import { AppError } from '../../../core/app-error.ts'
import { findRetention, yearsAfter } from '../../../core/retention-times.ts'
import type { Deps } from '../../../deps.ts'
import { listErasureNotes } from '../../../proof/erasure-notes.ts'
import { eraseAtOnce } from '../service.ts'
import * as store from '../store.ts'

/**
 * Erases everybody whom a note outside the database names and the database does not: it was restored from before, or the
 * process ended before the commit. Gives how many cannot be erased yet, because the database of then has a hold or an open order.
 */
export const eraseNoted = async (deps: Deps): Promise<number> => {
  const known = new Set(await store.listErasureIds(deps.prisma, deps.shopId))
  let waiting = 0
  for (const { erasureId, customerId, reason, identity, by } of listErasureNotes(
    deps.digestPlaces,
    deps.shopId,
  )) {
    if (known.has(erasureId)) continue
    try {
      await eraseAtOnce(deps, customerId, { erasureId, reason, identity, by })
    } catch (error) {
      if (!(error instanceof AppError)) throw error
      // A database from before the customer came has nothing of them.
      if (error.code === 'ERASURE_REFUSED') waiting += 1
    }
  }
  return waiting
}

/** Erases what came late of people who were erased, and reports of theirs whose time is over. */
export const eraseLate = async (deps: Deps): Promise<void> => {
  const { reportYears } = await findRetention(deps.prisma, deps.shopId)
  const sealedBefore = yearsAfter(deps.clock.now(), 0 - reportYears)
  for (const customerId of await store.listErasedWithRest(deps.prisma, deps.shopId, sealedBefore))
    await eraseAtOnce(deps, customerId, {
      erasureId: crypto.randomUUID(),
      reason: 'came-late',
      identity: null,
      by: null,
    })
}
