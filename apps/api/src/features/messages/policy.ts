import type {
  AskedChannel,
  AskedPurpose,
  ChoicePurpose,
  MessageChoice,
  MessagePurpose,
} from '@bayledger/contract/messages'

const minute = 60_000
const day = 24 * 60 * minute

/** For so long a message belongs to the process that took it; no try takes longer. */
export const leaseMs = 5 * minute

/** A message that cannot be handed over for so long is given up (RFC 5321, section 4.5.4.1: four to five days). */
export const giveUpMs = 5 * day

/** From the second try on, twice as long as before, up to 30 minutes (the interval that RFC 5321 names, section 4.5.4.1). */
export const waitBeforeTry = (tries: number): number => Math.min(2 ** (tries - 1), 30) * minute

/** A report of more than this goes as a link only: many mailboxes take no larger letter; common practice, no source. */
export const mostAttachedBytes = 8 * 1024 * 1024

/** What the customer's consent to a message is asked under. */
export const choiceOf = (purpose: MessagePurpose): ChoicePurpose =>
  purpose === 'retorque' || purpose === 'deferred' ? purpose : 'job'

type Card = { readonly mayEmail: boolean; readonly mayText: boolean; readonly mayCall: boolean }
const onCard = { email: 'mayEmail', text: 'mayText', call: 'mayCall' } as const

/**
 * Whether the customer agreed: what they said last of this purpose holds, else the card. Nobody is reminded of work put off
 * who did not agree to that.
 */
export const hasAgreed = (
  card: Card,
  choices: readonly MessageChoice[],
  purpose: AskedPurpose,
  channel: AskedChannel,
): boolean => {
  const own = choices.find((choice) => choice.purpose === purpose && choice.channel === channel)
  if (own) return own.allowed
  return purpose !== 'deferred' && card[onCard[channel]]
}
