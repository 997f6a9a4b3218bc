import type { Device } from '@bayledger/contract/devices'
import { type BaySession, resumeAtBay, type Session } from '@bayledger/contract/sessions'
import { sessionText } from '@bayledger/ledger/tablet-signing'
import { tabletKey } from '../../../ledger/tablet-key.ts'
import { call } from '../../../lib/api-client.ts'
import { endLocalSession, localSession } from './local-session.ts'

/** Asks the server to go on with the session that this tablet gave; `null`: there is none. `at`: the server's time, just heard. */
export const goOnWithServer = async ({ deviceId, now: at }: Device): Promise<Session | null> => {
  const local = localSession()
  if (local === null) return null
  const { pinVersion } = local
  const { staffId } = local.session.staff
  const signature = await tabletKey.sign(deviceId, sessionText({ deviceId, staffId, pinVersion, at }))
  if (signature === null) return null
  const { pinVersion: _, ...session }: BaySession = await call(resumeAtBay, {
    body: { staffId, pinVersion, at, signature },
  })
  // Somebody else has signed in meanwhile, and the tablet is theirs.
  if (localSession() !== local) return null
  endLocalSession()
  return session
}
