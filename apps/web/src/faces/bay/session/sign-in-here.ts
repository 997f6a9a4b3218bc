import type { Device } from '@bayledger/contract/devices'
import { registerDeviceKey } from '@bayledger/contract/devices'
import { type Session, signInAtBay } from '@bayledger/contract/sessions'
import { signInProblems } from '@bayledger/wording/en/sign-in-problems'
import { tabletPins } from '../../../ledger/pin-checks.ts'
import { tabletKey } from '../../../ledger/tablet-key.ts'
import { tabletVault } from '../../../ledger/vault.ts'
import { call } from '../../../lib/api-client.ts'
import { isOutOfReach } from '../../../lib/out-of-reach.ts'
import { CallProblem } from '../../../lib/problem.ts'
import { beginLocalSession, endLocalSession } from './local-session.ts'

/** For how long the server is waited for where the tablet can check the PIN itself: a change of person takes 2 s. */
const patienceMilliseconds = 2_000

/**
 * Signs a person in: with the server where it answers, with the tablet itself where it does not. Rejects with a `CallProblem`
 * that says what is wrong.
 */
export const signInHere = async (staffId: string, pin: string): Promise<Session> => {
  const signal = (await tabletPins.knows(staffId)) ? AbortSignal.timeout(patienceMilliseconds) : undefined
  try {
    const { pinVersion, ...session } = await call(signInAtBay, {
      body: { staffId, pin },
      ...(signal === undefined ? {} : { signal }),
    })
    endLocalSession()
    await tabletPins.keep({ staffId, version: pinVersion }, pin, session).catch(() => undefined)
    return session
  } catch (thrown) {
    if (!isOutOfReach(thrown)) throw thrown
    return signInAlone(staffId, pin)
  }
}

const signInAlone = async (staffId: string, pin: string): Promise<Session> => {
  const { version, beside } = await checkPinHere(staffId, pin)
  const now = (await tabletVault.timeNow()) ?? Date.now()
  const session: Session = { ...(beside as Session), now: new Date(now).toISOString() }
  beginLocalSession({ session, pinVersion: version })
  return session
}

/** A PIN that the tablet checks because the server is out of reach. Rejects with a `CallProblem` unless it is right. */
export const checkPinHere = async (
  staffId: string,
  pin: string,
): Promise<{ readonly version: number; readonly beside: unknown }> => {
  const check = await tabletPins.check(staffId, pin)
  switch (check.is) {
    case 'right':
      return check
    case 'wrong':
      throw problem(
        401,
        'PIN_REFUSED',
        signInProblems.PIN_REFUSED.title,
        signInProblems.PIN_REFUSED.detail({}),
      )
    case 'blocked':
      throw problem(
        429,
        'SIGN_IN_BLOCKED',
        signInProblems.SIGN_IN_BLOCKED.title,
        signInProblems.SIGN_IN_BLOCKED.detail({ seconds: check.seconds }),
      )
    case 'unknown':
      throw problem(
        0,
        'PIN_NOT_KEPT',
        'The server does not answer, and this tablet cannot check this PIN.',
        'It checks the PIN of whoever signed in on it before, with the server in reach. Choose somebody who did, or wait for the server.',
      )
  }
}

/** A tablet that was enrolled without a key makes one now and says its public half; `null`: it has one, or cannot make any. */
export const registerKey = async ({ deviceId, hasKey }: Device): Promise<Device | null> => {
  const publicKey = hasKey ? null : await tabletKey.publicKeyOf(deviceId)
  return publicKey === null ? null : call(registerDeviceKey, { body: { publicKey } })
}

const problem = (
  status: number,
  code: 'PIN_REFUSED' | 'SIGN_IN_BLOCKED' | 'PIN_NOT_KEPT',
  title: string,
  detail: string,
): CallProblem => new CallProblem({ status, code, title, detail })
