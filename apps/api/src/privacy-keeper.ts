import { forShop, type Parts } from './deps.ts'
import { eraseLate, eraseNoted } from './features/erasures/service/erase-again.ts'
import { forgetDue } from './features/retention/service.ts'
import { listShopZones } from './proof/digest-notes.ts'

export type PrivacyKeeper = {
  /** One round over every shop. */
  readonly look: () => Promise<void>
  /** Looks from now on, round by round. */
  readonly keep: () => void
  /** Ends the round that is under way. */
  readonly stop: () => Promise<void>
}

/** What is due is done within the hour. */
const lookEveryMs = 3_600_000

/** Erases again who was erased before the database was restored, and what is due. `problem` hears of what could not be done. */
export const keepPrivacy = (
  parts: Parts,
  problem: (words: string, error: unknown) => void,
): PrivacyKeeper => {
  let working: Promise<void> = Promise.resolve()
  let timer: NodeJS.Timeout | undefined
  const round = async () => {
    for (const { shopId, name } of await listShopZones(parts.pool))
      try {
        const deps = forShop(parts, shopId)
        const waiting = await eraseNoted(deps)
        if (waiting > 0)
          problem(
            `${waiting} erasures of ${name} are noted and cannot be done again yet: in this database there is a legal hold, or an order is open. See docs/privacy.md.`,
            null,
          )
        await eraseLate(deps)
        await forgetDue(deps)
      } catch (error) {
        problem(
          `What is due to be erased of ${name} could not be erased. It is tried again in an hour.`,
          error,
        )
      }
  }
  const look = (): Promise<void> => {
    working = working
      .then(round)
      .catch((error: unknown) => problem('Nothing was looked at that may be due to be erased.', error))
    return working
  }
  return {
    look,
    keep: () => {
      timer = setInterval(() => void look(), lookEveryMs)
      timer.unref()
    },
    stop: async () => {
      clearInterval(timer)
      await working
    },
  }
}
