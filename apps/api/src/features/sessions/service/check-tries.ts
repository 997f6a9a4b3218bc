import { AppError } from '../../../core/app-error.ts'
import type { Deps } from '../../../deps.ts'
import { longestWaitMs, type Tries } from '../policy.ts'
import { takeTry } from '../store/count-tries.ts'

/**
 * Counts a try as wrong before it is looked at, so that a thousand tries at once are not a thousand tries. Gives the seconds of
 * the wait that begins if it is wrong, 0 for none. @throws SIGN_IN_BLOCKED while a wait is under way
 */
export const spendTry = async (deps: Deps, tries: Tries): Promise<number> => {
  const taken = await takeTry(deps, tries, longestWaitMs)
  if (taken.is === 'taken') return taken.waitUntil === null ? 0 : secondsUntil(deps, taken.waitUntil)
  const seconds = Math.max(1, secondsUntil(deps, taken.until))
  throw new AppError({ code: 'SIGN_IN_BLOCKED', seconds }, { retryAfterSeconds: seconds })
}

const secondsUntil = ({ clock }: Deps, instant: Date): number =>
  Math.ceil((instant.getTime() - clock.now().getTime()) / 1000)
