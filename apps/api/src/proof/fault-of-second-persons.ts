import { agreementOf, secondPersonIn } from '@bayledger/ledger/agreement'
import type { Entry } from '@bayledger/ledger/entry'
import { upcast } from '@bayledger/ledger/upcast'
import type { Pool } from 'pg'
import { tokenDigest } from '../core/tokens.ts'
import { listSecondPersonProofs } from './read-proof.ts'

/**
 * The first entry whose second person is not the one who proved by PIN that they agree to it, with what is wrong;
 * `null`: all are. First versions of a kind named a person and needed no proof; those are passed over.
 */
export const faultOfSecondPersons = async (
  pool: Pool,
  shopId: string,
  entries: readonly Entry[],
): Promise<{ readonly seq: number; readonly what: string } | null> => {
  const named = entries.map(upcast).flatMap((entry) => {
    const person = secondPersonIn(entry)
    const agreed = agreementOf(entry)
    return person?.proof && agreed
      ? [{ seq: entry.seq, staffId: person.staffId, hash: tokenDigest(person.proof.token), agreed }]
      : []
  })
  const proofs = new Map(
    (
      await listSecondPersonProofs(
        pool,
        shopId,
        named.map(({ hash }) => hash),
      )
    ).map((row) => [row.tokenHash, row]),
  )
  for (const { seq, staffId, hash, agreed } of named) {
    const proof = proofs.get(hash)
    if (!proof) return { seq, what: 'its second person never proved by PIN that they agree' }
    const isTheirs =
      proof.staffId === staffId &&
      proof.orderId === agreed.orderId &&
      proof.entryId === agreed.entryId &&
      proof.kind === agreed.kind &&
      proof.digest === agreed.digest
    if (!isTheirs) return { seq, what: 'the PIN of its second person was given for something else' }
  }
  return null
}
