import type { Message } from '@bayledger/contract/messages'
import { describe, expect, it } from 'vitest'
import { messageWords } from './message-words.ts'

const now = '2026-01-12T16:40:00.000Z'
const clock = { timeZone: 'America/New_York' }
const message: Message = {
  ...{ messageId: '0', purpose: 'estimate', channel: 'email', state: 'waiting', reason: null },
  ...{ createdAt: now, dueAt: now, nextTryAt: '2026-01-13T13:00:00.000Z', tries: 0, recipient: null },
  ...{ serverWords: null, endedAt: null, linkId: null },
}
const says = (change: Partial<Message>) => messageWords({ ...message, ...change }, now, clock)

describe('what the desk reads of a message', () => {
  it('is when it goes, and what the mail server said meanwhile', () => {
    expect(says({})).toBe('Estimate by e-mail: waiting, goes at Jan 13, 8:00\u00a0AM.')
    expect(says({ nextTryAt: '2026-01-12T13:00:00.000Z' })).toBe('Estimate by e-mail: waiting.')
    expect(says({ serverWords: '451 Try again later' })).toBe(
      'Estimate by e-mail: waiting, goes at Jan 13, 8:00\u00a0AM. The mail server did not take it yet. It says: “451 Try again later”',
    )
  })

  it('is of the folder where a text could not be put into it', () => {
    expect(says({ channel: 'text', serverWords: 'ENOSPC: no space left' })).toBe(
      'Estimate by text: waiting, goes at Jan 13, 8:00\u00a0AM. It could not be put into the folder for texts yet: “ENOSPC: no space left”',
    )
  })

  it('is what became of it, with the server’s words where it was not taken', () => {
    const ended = { nextTryAt: null, endedAt: now, recipient: 'a@mail.example' }
    expect(says({ ...ended, state: 'handed-over' })).toBe(
      'Estimate by e-mail: handed over at 11:40\u00a0AM to a@mail.example.',
    )
    expect(says({ ...ended, state: 'bounced', serverWords: '550 No such mailbox' })).toBe(
      'Estimate by e-mail: came back at 11:40\u00a0AM: there is no mailbox a@mail.example. Correct the address on the customer’s card and send it again. It says: “550 No such mailbox”',
    )
    expect(says({ ...ended, state: 'refused', serverWords: '554 No' })).toContain(
      'refused by the mail server',
    )
    expect(says({ ...ended, state: 'withheld', reason: 'not-agreed', purpose: 'deferred' })).toBe(
      'Reminder of work put off by e-mail: not sent: the customer has not agreed to it.',
    )
  })
})
