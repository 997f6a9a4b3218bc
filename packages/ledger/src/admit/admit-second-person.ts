import { agreementOf, secondPersonIn } from '../agreement.ts'
import type { Draft } from '../entry.ts'
import { definitionOf } from '../registry.ts'
import { provenByDoer } from '../second-person.ts'
import type { AdmitFacts } from './facts.ts'
import { type Refusal, refuse } from './refusal.ts'

/**
 * The rules for the second person whom an entry names: they are not its writer, unless the kind is proven by its doer; they
 * work here, they may agree to this kind, and they have shown with their PIN, to the server or to the tablet, that they agree to
 * this entry.
 */
export const admitSecondPerson = (draft: Draft, facts: AdmitFacts): Refusal | null => {
  const person = secondPersonIn(draft)
  const agreement = agreementOf(draft)
  if (!person || !agreement) return null
  const isWriter = facts.author.kind === 'staff' && facts.author.staffId === person.staffId
  if (isWriter && !provenByDoer.has(agreement.kind)) return refuse('SECOND_PERSON_IS_DOER', { to: 'agree' })
  const held = facts.staff.get(person.staffId)
  if (!held) return refuse('SECOND_PERSON_UNKNOWN', {})
  const { agreedBy } = definitionOf(draft.kind)
  if (!held.some((role) => agreedBy.includes(role)))
    return refuse('SECOND_PERSON_ROLE_NOT_ALLOWED', { roles: agreedBy })
  const proven = facts.secondPersons.get(draft.id)
  const isProven =
    person.proof !== null &&
    // A tablet vouches for a PIN that was typed on it: the entry comes from there.
    (person.proof.how === 'pin' || person.proof.deviceId === draft.deviceId) &&
    proven?.staffId === person.staffId &&
    proven.orderId === agreement.orderId &&
    proven.kind === agreement.kind &&
    proven.digest === agreement.digest &&
    (proven.until === null || facts.now <= proven.until)
  return isProven ? null : refuse('SECOND_PERSON_UNPROVEN', {})
}
