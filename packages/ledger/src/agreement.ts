import { digestOf } from './digests.ts'
import type { Kind, PayloadOf } from './registry.ts'
import {
  type AgreedKind,
  namedOnly,
  type ProvenKind,
  type SecondPerson,
  type SecondPersonProof,
} from './second-person.ts'

/**
 * What a second person agrees to: which entry of which order, and the digest of what it says. A figure of a sheet belongs
 * to no order: there both ids are one that its sender makes, and the digest is that of the figure.
 */
export type Agreement = {
  readonly orderId: string
  readonly entryId: string
  readonly kind: ProvenKind
  readonly digest: string
}

/** The part of an entry that a second person agrees to; a device has it before the server knows who writes. */
export type Agreeable = {
  [K in Kind]: {
    readonly id: string
    readonly orderId: string
    readonly kind: K
    readonly payload: PayloadOf<K>
  }
}[Kind]

type Named = {
  readonly kind: AgreedKind
  readonly person: SecondPerson
  /** The payload with this in the person's place. */
  readonly replacedBy: (person: SecondPerson) => unknown
}

const namedIn = ({ kind, payload }: Agreeable): Named | null => {
  switch (kind) {
    case 'entry.struck':
      return (
        payload.secondPerson && {
          kind,
          person: payload.secondPerson,
          replacedBy: (secondPerson) => ({ ...payload, secondPerson }),
        }
      )
    case 'order.handed_back':
      return (
        payload.releaseAgreedBy && {
          kind,
          person: payload.releaseAgreedBy,
          replacedBy: (releaseAgreedBy) => ({ ...payload, releaseAgreedBy }),
        }
      )
    case 'sealant.purged':
      return { kind, person: payload.aware, replacedBy: (aware) => ({ ...payload, aware }) }
    case 'torque.checked':
      return (
        payload.checkedBy && {
          kind,
          person: payload.checkedBy,
          replacedBy: (checkedBy) => ({ ...payload, checkedBy }),
        }
      )
    case 'refusal.recorded': {
      const { proof } = payload
      if (proof.kind !== 'refused-to-sign') return null
      return {
        kind,
        person: proof.witness,
        replacedBy: (witness) => ({ ...payload, proof: { ...proof, witness } }),
      }
    }
    default:
      return null
  }
}

/** The second person whom this entry names, or `null`. */
export const secondPersonIn = (draft: Agreeable): SecondPerson | null => namedIn(draft)?.person ?? null

/**
 * What the second person of this entry agrees to, or `null` if it names none. The digest is SHA-256 of the payload's
 * canonical text (RFC 8785) with `null` in place of their proof, because the proof is made from the digest.
 */
export const agreementOf = (draft: Agreeable): Agreement | null => {
  const named = namedIn(draft)
  if (!named) return null
  const digest = digestOf(named.replacedBy(namedOnly(named.person.staffId)))
  return { orderId: draft.orderId, entryId: draft.id, kind: named.kind, digest }
}

/** The same entry with the token that its second person's PIN earned. @throws RangeError where it names nobody. */
export const withProof = <D extends Agreeable>(draft: D, token: string): D =>
  provenBy(draft, { how: 'pin', token })

/** The same entry with what proves its second person. @throws RangeError where it names nobody. */
export const provenBy = <D extends Agreeable>(draft: D, proof: SecondPersonProof): D => {
  const named = namedIn(draft)
  if (!named) throw new RangeError(`${draft.kind} names no second person`)
  return { ...draft, payload: named.replacedBy({ ...named.person, proof }) }
}
