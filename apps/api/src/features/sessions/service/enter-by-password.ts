import type { Awaited } from '@bayledger/contract/endpoint'
import { AppError } from '../../../core/app-error.ts'
import type { CalledFrom } from '../../../core/called-from.ts'
import type { Deps } from '../../../deps.ts'
import { clearTries, giveBackTry } from '../store/count-tries.ts'
import { rememberBrowser } from '../store/known-browser.ts'
import * as store from '../store.ts'
import { noteFailure } from './check-secret.ts'
import { passwordMatches, spendPasswordTime } from './hash-password.ts'
import { checkSecondStep, secondStepAwaited } from './second-step.ts'
import { spendTriesOfName } from './tries-of-name.ts'

type Entering = {
  readonly name: string
  readonly password: string
  readonly code: string | undefined
  readonly browserHash: string
  readonly from: CalledFrom
}

type Entered = { readonly staffId: string; readonly awaits: Awaited | null }

/**
 * The person whose name and password these are, and whose code where they have turned that on; their browser is known from then on.
 * Gives them with what they have to do next.
 * @throws SIGN_IN_REFUSED, SIGN_IN_BLOCKED, SECOND_STEP_NEEDED, SECOND_STEP_REFUSED
 */
export const enterByPassword = async (
  deps: Deps,
  { name, password, code, browserHash, from: { address } }: Entering,
): Promise<Entered> => {
  const staff = await store.findStaffBySignInName(deps, name.toLowerCase())
  const { byName, byAddress, waitSeconds } = await spendTriesOfName(deps, {
    name,
    staffId: staff?.id ?? null,
    browserHash,
    address,
  })
  const right = staff?.passwordHash
    ? await passwordMatches(password, staff.passwordHash)
    : await spendPasswordTime(password)
  if (!staff || !right) {
    const aboutId = staff?.id ?? null
    await noteFailure(deps, { kind: 'sign-in-failed', aboutId, deviceId: null, address, waitSeconds })
    throw new AppError({ code: 'SIGN_IN_REFUSED' })
  }
  if (!staff.active) throw new AppError({ code: 'SIGN_IN_REFUSED', why: 'left' })
  if (staff.firstPasswordUntil !== null && staff.firstPasswordUntil <= deps.clock.now())
    throw new AppError({ code: 'SIGN_IN_REFUSED', why: 'first-over' })
  try {
    await checkSecondStep(deps, { staffId: staff.id, code, address })
  } catch (error) {
    // Only a code that was typed is a try. Those at it are forgotten with the sign-in, not with the password.
    if (error instanceof AppError && error.code !== 'SECOND_STEP_REFUSED') await giveBackTry(deps, byName)
    throw error
  }
  await clearTries(deps, byName)
  if (byAddress !== null) await giveBackTry(deps, byAddress)
  await rememberBrowser(deps, { staffId: staff.id, tokenHash: browserHash })
  const awaits = staff.firstPasswordUntil === null ? await secondStepAwaited(deps, staff.id) : 'password'
  return { staffId: staff.id, awaits }
}
