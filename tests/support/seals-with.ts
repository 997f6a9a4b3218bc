import type { Signing, SigningIdentity } from '../../apps/api/src/deps.ts'

/** Every shop's reports are sealed with this key, without files. */
export const alwaysSealsWith = (identity: SigningIdentity): Signing => ({
  signingOf: async () => identity,
  signingTroubles: async () => [],
})
