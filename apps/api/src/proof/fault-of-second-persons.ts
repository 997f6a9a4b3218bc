import { type Agreement, agreementOf, secondPersonIn } from '@bayledger/ledger/agreement'
import type { Entry } from '@bayledger/ledger/entry'
import type { SecondPersonProof } from '@bayledger/ledger/second-person'
import { agreementText } from '@bayledger/ledger/tablet-signing'
import { upcast } from '@bayledger/ledger/upcast'
import type { Pool } from 'pg'
import { isSignedBy } from '../core/tablet-signature.ts'
import { tokenDigest } from '../core/tokens.ts'
import { listDeviceKeys, listSecondPersonProofs } from './read-proof.ts'

type Named = {
  readonly seq: number
  readonly staffId: string
  readonly proof: SecondPersonProof
  readonly agreed: Agreement
}

/**
 * The first entry whose second person is not the one who proved by PIN that they agree to it, with what is wrong;
 * `null`: all are. First versions of a kind named a person and needed no proof; those are passed over.
 */
export const faultOfSecondPersons = async (
  pool: Pool,
  shopId: string,
  entries: readonly Entry[],
): Promise<{ readonly seq: number; readonly what: string } | null> => {
  const named = entries.map(upcast).flatMap((entry): Named[] => {
    const person = secondPersonIn(entry)
    const agreed = agreementOf(entry)
    return person?.proof && agreed
      ? [{ seq: entry.seq, staffId: person.staffId, proof: person.proof, agreed }]
      : []
  })
  const faultOfToken = await tokenJudge(pool, shopId, named)
  const faultOfSignature = await signatureJudge(pool, shopId, named)
  for (const one of named) {
    const what = one.proof.how === 'pin' ? faultOfToken(one, one.proof) : faultOfSignature(one, one.proof)
    if (what !== null) return { seq: one.seq, what }
  }
  return null
}

const tokenJudge = async (pool: Pool, shopId: string, named: readonly Named[]) => {
  const hashes = named.flatMap(({ proof }) => (proof.how === 'pin' ? [tokenDigest(proof.token)] : []))
  const rows = await listSecondPersonProofs(pool, shopId, hashes)
  const proofs = new Map(rows.map((row) => [row.tokenHash, row]))
  return ({ staffId, agreed }: Named, { token }: { readonly token: string }): string | null => {
    const proof = proofs.get(tokenDigest(token))
    if (!proof) return 'its second person never proved by PIN that they agree'
    const isTheirs =
      proof.staffId === staffId &&
      proof.orderId === agreed.orderId &&
      proof.entryId === agreed.entryId &&
      proof.kind === agreed.kind &&
      proof.digest === agreed.digest
    return isTheirs ? null : 'the PIN of its second person was given for something else'
  }
}

const signatureJudge = async (pool: Pool, shopId: string, named: readonly Named[]) => {
  const ids = named.flatMap(({ proof }) => (proof.how === 'tablet' ? [proof.deviceId] : []))
  const keys = ids.length === 0 ? new Map<string, string>() : await listDeviceKeys(pool, shopId, ids)
  return (
    { staffId, agreed }: Named,
    { deviceId, signature }: { readonly deviceId: string; readonly signature: string },
  ): string | null => {
    const key = keys.get(deviceId)
    if (key === undefined) return 'the tablet that vouches for its second person has no key here'
    return isSignedBy(key, agreementText(agreed, { deviceId, staffId }), signature)
      ? null
      : 'the tablet that vouches for its second person did not sign this'
  }
}
