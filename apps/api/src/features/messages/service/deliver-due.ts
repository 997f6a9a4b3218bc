import type { MessageChannel } from '@bayledger/contract/messages'
import { v7 as newId } from 'uuid'
import type { Outcome } from '../../../carriers/carrier.ts'
import { newToken } from '../../../core/tokens.ts'
import { forShop, type Parts } from '../../../deps.ts'
import { notMade } from '../../../words/message-words.ts'
import { waitBeforeTry } from '../policy.ts'
import { type ClaimedMessage, claimMessage, giveUpOld } from '../store/claim-message.ts'
import { type Settled, settleMessage } from '../store/settle-message.ts'
import { type Composed, composeMessage } from './compose-letter.ts'

/** So many messages go at most before the clock is looked at again. */
const mostAtOnce = 100

/**
 * Hands over what is due, of every shop, one after the other; gives how many were tried. A mail server that does not
 * answer ends the round, so that the others do not wait for it one by one. `problem` hears of a message that could not be made.
 */
export const deliverDue = async (
  parts: Parts,
  problem: (words: string, error: unknown) => void,
): Promise<number> => {
  const { pool, clock, carriers } = parts
  await giveUpOld(pool, clock.now())
  const channels = (['email', 'text'] as const).filter((channel) => carriers[channel] !== null)
  for (let tried = 0; tried < mostAtOnce; tried += 1) {
    const message = await claim(parts, channels)
    if (message === null) return tried
    const settled = await tryOnce(parts, message).catch((error: unknown): Settled => {
      problem(notMade, error)
      return later(parts, message, notMade, null)
    })
    await settleMessage(pool, message, clock.now(), settled)
    // The floor says where an estimate came to nothing. No entry was written: whoever has read the order has all of it.
    if (message.purpose === 'estimate')
      parts.live.wrote(message.shopId, [{ orderId: message.orderId, seq: 0 }])
    if (settled.state === 'later') return tried + 1
  }
  return mostAtOnce
}

const claim = ({ pool, clock }: Parts, channels: readonly MessageChannel[]) =>
  channels.length === 0
    ? null
    : claimMessage(pool, clock.now(), channels, {
        linkId: newId(),
        linkSecret: newToken(),
        unsubscribe: newToken(),
      })

const later = (
  { clock }: Parts,
  { tries }: ClaimedMessage,
  words: string,
  recipient: string | null,
): Settled => ({
  state: 'later',
  at: new Date(clock.now().getTime() + waitBeforeTry(tries)),
  words,
  recipient,
})

const tryOnce = async (parts: Parts, message: ClaimedMessage): Promise<Settled> => {
  const composed = await composeMessage(forShop(parts, message.shopId), message)
  switch (composed.what) {
    case 'withheld':
      return { state: 'withheld', reason: composed.reason }
    case 'withdrawn':
      return { state: 'withdrawn', words: null, recipient: null }
    case 'postponed':
      return { state: 'postponed', at: composed.at, dueAgain: composed.dueAgain }
    default: {
      const recipient = composed.what === 'text' ? composed.message.to : composed.letter.to.address
      const { became, words } = await carry(parts, composed)
      return became === 'later'
        ? later(parts, message, words, recipient)
        : { state: became, words, recipient }
    }
  }
}

const carry = (
  { carriers }: Parts,
  composed: Extract<Composed, { what: 'letter' | 'text' }>,
): Promise<Outcome> => {
  const sent =
    composed.what === 'text' ? carriers.text?.(composed.message) : carriers.email?.(composed.letter)
  if (!sent) throw new Error('a message was taken that no carrier takes')
  return sent
}
