import { type SecurityEventLine, securityEventKinds } from '@bayledger/contract/security-events'
import { expect, it } from 'vitest'
import { securitySentence, securityTime } from './security-words.ts'

const event: SecurityEventLine = {
  id: '019bb314-2300-7000-8000-000000000000',
  kind: 'pin-failed',
  count: 4,
  firstAt: '2026-01-12T14:02:00.000Z',
  lastAt: '2026-01-12T16:38:00.000Z',
  by: null,
  about: 'Rufus Odell',
  tablet: 'Bay 2',
  address: '192.0.2.7',
  details: {},
}

it('says who did what, how often and where', () => {
  expect(securitySentence(event)).toBe(
    'A wrong PIN was typed 4 times for Rufus Odell on the tablet Bay 2 from 192.0.2.7.',
  )
  const left = { ...event, kind: 'person-changed', by: 'The owner', details: { active: false } } as const
  expect(securitySentence(left)).toBe('The owner saved Rufus Odell: left the shop.')
  for (const kind of securityEventKinds) expect(securitySentence({ ...event, kind })).toMatch(/^\S.*\.$/)
})

it('says from when to when several came', () => {
  const time = securityTime(event, '2026-01-12T17:00:00.000Z', { timeZone: 'America/New_York' })
  expect(time.replace(/\s/g, ' ')).toBe('9:02 AM to 11:38 AM')
})
