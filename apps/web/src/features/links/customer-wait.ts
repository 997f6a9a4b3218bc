import type { CustomerLink } from '@bayledger/contract/links'
import type { Message } from '@bayledger/contract/messages'
import { type Clock, clockTimeOrDate } from '../../lib/format.ts'
import { messageWords } from './message-words.ts'

type Link = Pick<CustomerLink, 'createdAt' | 'openedAt' | 'revokedAt'>

/**
 * What a wait for the customer's answer is: a link that they have and when they opened it, or an estimate that never reached
 * them, which nobody would wait for. `otherwise`: said where neither a link nor a message is there.
 */
export const customerWaitWords = (
  links: readonly Link[],
  messages: readonly Message[],
  at: { readonly now: string; readonly clock: Clock },
  otherwise: string,
): string => {
  const link = links.filter(({ revokedAt }) => revokedAt === null).at(-1)
  const message = messages
    .filter(({ purpose, state }) => purpose === 'estimate' && state !== 'withdrawn')
    .at(-1)
  const isNewest =
    message !== undefined && (link === undefined || (message.endedAt ?? message.createdAt) >= link.createdAt)
  if (isNewest && message.state !== 'handed-over') {
    // What the server said is among the messages: the head has room for what to do.
    const words = messageWords({ ...message, serverWords: null }, at.now, at.clock)
    return message.state === 'waiting' ? words : `The customer does not have it. ${words}`
  }
  if (link === undefined) return otherwise
  const when = (instant: string) => clockTimeOrDate(instant, at.now, at.clock)
  const opened = link.openedAt[0]
  return `Waiting for the customer: link sent ${when(link.createdAt)}, ${opened === undefined ? 'not opened yet' : `opened ${when(opened)}`}.`
}
