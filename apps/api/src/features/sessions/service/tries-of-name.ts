import { tokenDigest } from '../../../core/tokens.ts'
import type { Deps } from '../../../deps.ts'
import { knownBrowserMs, type Tries, triesElsewhere, triesInKnownBrowser, triesOfAddress } from '../policy.ts'
import { isKnownBrowser } from '../store/known-browser.ts'
import { spendTry } from './check-tries.ts'

type Trying = {
  /** As it was typed; `staffId`: whose it is, if anybody's. */
  readonly name: string
  readonly staffId: string | null
  /** `null`: the browser has never been here. */
  readonly browserHash: string | null
  readonly address: string
}

/** The tries that were spent, and the seconds of the wait that begins if they were wrong. */
type Spent = { readonly byName: Tries; readonly byAddress: Tries | null; readonly waitSeconds: number }

/**
 * Spends a try of whoever tries to come in under a name at the desk, by whatever they type besides. A browser that is known has
 * tries of its own; all others share those of the name, and those of their address. @throws SIGN_IN_BLOCKED
 */
export const spendTriesOfName = async (
  deps: Deps,
  { name, staffId, browserHash, address }: Trying,
): Promise<Spent> => {
  const isKnown = staffId !== null && browserHash !== null && (await knows(deps, staffId, browserHash))
  const byName = isKnown
    ? triesInKnownBrowser(staffId, browserHash)
    : triesElsewhere(staffId ?? tokenDigest(name.toLowerCase()))
  const byAddress = isKnown ? null : triesOfAddress(address)
  const waits = [byAddress === null ? 0 : await spendTry(deps, byAddress), await spendTry(deps, byName)]
  return { byName, byAddress, waitSeconds: Math.max(...waits) }
}

const knows = (deps: Deps, staffId: string, tokenHash: string): Promise<boolean> =>
  isKnownBrowser(deps, {
    staffId,
    tokenHash,
    since: new Date(deps.clock.now().getTime() - knownBrowserMs),
  })
