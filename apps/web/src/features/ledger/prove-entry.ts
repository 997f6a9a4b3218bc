import { proveSecondPerson } from '@bayledger/contract/staff'
import { type Agreeable, agreementOf, secondPersonIn, withProof } from '@bayledger/ledger/agreement'
import { call } from '../../lib/api-client.ts'

/** Entries that were proven and whose answer never came: sent again they must be the same to the letter. */
const proven = new WeakMap<object, unknown>()

/** The entry with the proof that its second person's PIN earns. Rejects with the server's words where it is wrong. */
export const proveEntry = async <D extends Agreeable>(
  entry: D,
  pin: string,
  signal?: AbortSignal,
): Promise<D> => {
  const known = proven.get(entry)
  if (known !== undefined) return known as D
  const person = secondPersonIn(entry)
  const agreesTo = agreementOf(entry)
  if (person === null || agreesTo === null) return entry
  const { token } = await call(proveSecondPerson, {
    body: { staffId: person.staffId, pin, agreesTo },
    ...(signal === undefined ? {} : { signal }),
  })
  const made = withProof(entry, token)
  proven.set(entry, made)
  return made
}
