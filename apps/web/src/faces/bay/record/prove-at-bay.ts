import { type Agreeable, agreementOf, provenBy, secondPersonIn } from '@bayledger/ledger/agreement'
import { agreementText } from '@bayledger/ledger/tablet-signing'
import { proveEntry } from '../../../features/ledger/prove-entry.ts'
import { tabletKey } from '../../../ledger/tablet-key.ts'
import { isOutOfReach } from '../../../lib/out-of-reach.ts'
import { checkPinHere } from '../session/sign-in-here.ts'

/** For how long the server is waited for before the tablet checks the PIN itself. */
const patienceMilliseconds = 2_000

/**
 * The entry with what its second person's PIN earns: the server's token, or, out of its reach, the signature of this tablet,
 * which checks the PIN itself. Rejects with a `CallProblem` that says why the step has to wait.
 */
export const proveAtBay = async <D extends Agreeable>(
  entry: D,
  pin: string,
  deviceId: string | null,
): Promise<D> => {
  try {
    return await proveEntry(entry, pin, AbortSignal.timeout(patienceMilliseconds))
  } catch (thrown) {
    if (deviceId === null || !isOutOfReach(thrown)) throw thrown
    return (await vouchedFor(entry, pin, deviceId)) ?? Promise.reject(thrown)
  }
}

/** `null` where this tablet has no key to sign with. */
const vouchedFor = async <D extends Agreeable>(
  entry: D,
  pin: string,
  deviceId: string,
): Promise<D | null> => {
  const person = secondPersonIn(entry)
  const agreement = agreementOf(entry)
  if (person === null || agreement === null) return entry
  const { staffId } = person
  await checkPinHere(staffId, pin)
  const signature = await tabletKey.sign(deviceId, agreementText(agreement, { deviceId, staffId }))
  return signature === null ? null : provenBy(entry, { how: 'tablet', deviceId, signature })
}
