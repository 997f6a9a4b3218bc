import type { Message } from '@bayledger/contract/messages'
import { expect, it } from 'vitest'
import { customerWaitWords } from './customer-wait.ts'

const clock = { timeZone: 'America/New_York' }
const [nine, ten, eleven] = [
  '2026-01-12T14:00:00.000Z',
  '2026-01-12T15:00:00.000Z',
  '2026-01-12T16:00:00.000Z',
]
const message: Message = {
  ...{ messageId: '0', purpose: 'estimate', channel: 'email', state: 'handed-over', reason: null },
  ...{ createdAt: ten, dueAt: ten, nextTryAt: null, tries: 1, recipient: 'a@mail.example' },
  ...{ serverWords: null, endedAt: ten, linkId: null },
}
const says = (links: Parameters<typeof customerWaitWords>[0], change: Partial<Message> | null): string =>
  customerWaitWords(
    links,
    change === null ? [] : [{ ...message, ...change }],
    { now: eleven, clock },
    'Waiting for the customer.',
  )
const link = (createdAt: string, openedAt: string[] = []) => ({ createdAt, openedAt, revokedAt: null })
const sent = (at: string) => `Waiting for the customer: link sent ${at}\u00a0AM, not opened yet.`

it('a wait is for the newest link, and says when it was opened first', () => {
  expect(says([], null)).toBe('Waiting for the customer.')
  expect(says([link(nine), link(ten)], {})).toBe(sent('10:00'))
  expect(says([link(nine, [ten, eleven])], null)).toBe(
    'Waiting for the customer: link sent 9:00\u00a0AM, opened 10:00\u00a0AM.',
  )
})

it('nobody waits for a customer whom the estimate did not reach', () => {
  const bounced = { state: 'bounced', serverWords: '550 No such mailbox', endedAt: eleven } as const
  expect(says([link(nine), link(ten)], bounced)).toMatch(
    /^The customer does not have it\. Estimate by e-mail: came back at 11:00\u00a0AM: there is no mailbox a@mail\.example\. Correct the address on the customer’s card and send it again\.$/,
  )
  expect(says([], { state: 'withheld', reason: 'not-agreed' })).toContain('the customer has not agreed to it')
})

it('a message that has not gone yet says when it goes', () => {
  const nextTryAt = '2026-01-13T13:00:00.000Z'
  expect(says([link(nine)], { state: 'waiting', endedAt: null, nextTryAt })).toBe(
    'Estimate by e-mail: waiting, goes at Jan 13, 8:00\u00a0AM.',
  )
})

it('a link that was made after a message came back is what they have; a message that was withdrawn is nothing', () => {
  expect(says([link(eleven)], { state: 'bounced', endedAt: ten })).toBe(sent('11:00'))
  expect(says([link(nine)], { state: 'withdrawn', endedAt: eleven })).toBe(sent('9:00'))
  expect(says([link(nine)], { purpose: 'report', state: 'bounced', endedAt: eleven })).toBe(sent('9:00'))
})
