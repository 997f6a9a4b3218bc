import type { Message, MessagePurpose, WithheldReason } from '@bayledger/contract/messages'
import { type Clock, clockTimeOrDay } from '../../lib/format.ts'

/** What a message is about, as a line begins. */
export const purposeWords: Readonly<Record<MessagePurpose, string>> = {
  estimate: 'Estimate',
  report: 'Report',
  retorque: 'Reminder of the torque check',
  deferred: 'Reminder of work put off',
  'new-time': 'New time',
}

const withheldWords: Readonly<Record<WithheldReason, string>> = {
  'not-agreed': 'the customer has not agreed to it',
  'no-address': 'the customer’s card has no address',
  'nothing-to-say': 'there was nothing to say any more',
  'came-back': 'the vehicle came back before',
  'newer-message': 'a newer one takes its place',
  'order-ended': 'the order has ended',
}

/** "Estimate by e-mail: handed over at 09:12 to a@b.example." */
export const messageWords = (message: Message, now: string, clock: Clock): string => {
  const way = message.channel === 'email' ? 'by e-mail' : 'by text'
  return `${purposeWords[message.purpose]} ${way}: ${stateWords(message, now, (at) => clockTimeOrDay(at, now, clock))}`
}

const notTaken: Readonly<Record<Message['channel'], (words: string) => string>> = {
  email: (words) => ` The mail server did not take it yet. It says: “${words}”`,
  text: (words) => ` It could not be put into the folder for texts yet: “${words}”`,
}

const stateWords = (message: Message, now: string, timeOf: (at: string) => string): string => {
  const { state, reason, nextTryAt, endedAt, recipient, serverWords } = message
  const said = serverWords === null ? '' : ` It says: “${serverWords}”`
  const at = endedAt === null ? '' : ` at ${timeOf(endedAt)}`
  switch (state) {
    case 'waiting':
      // A time that has passed is none that it goes at: it waits for the mail server, or none is set.
      return `waiting${nextTryAt === null || nextTryAt <= now ? '' : `, goes at ${timeOf(nextTryAt)}`}.${
        serverWords === null ? '' : notTaken[message.channel](serverWords)
      }`
    case 'handed-over':
      return `handed over${at}${recipient === null ? '' : ` to ${recipient}`}.`
    case 'refused':
      return `refused by the mail server${at}. Show or print the link instead.${said}`
    case 'bounced':
      return `came back${at}: there is no mailbox ${recipient ?? ''}. Correct the address on the customer’s card and send it again.${said}`
    case 'withheld':
      return `not sent: ${reason === null ? 'it was held back' : withheldWords[reason]}.`
    case 'given-up':
      return `given up${at}; it could not be handed over for days. Show or print the link instead.${said}`
    case 'withdrawn':
      return `withdrawn${at}.`
  }
}
