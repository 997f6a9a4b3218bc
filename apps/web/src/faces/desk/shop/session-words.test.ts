import { expect, it } from 'vitest'
import { sessionLine } from './session-words.ts'

const session = {
  sessionId: '019bb314-2300-7000-8000-000000000000',
  kind: 'desk',
  device: null,
  address: '192.0.2.7',
  browser: null,
  startedAt: '2026-01-12T14:02:00.000Z',
  lastUsedAt: '2026-01-12T16:38:00.000Z',
  isThisOne: false,
} as const
const line = (changed: object) =>
  // Before AM is a space that does not break.
  sessionLine({ ...session, ...changed }, '2026-01-12T16:40:00.000Z', {
    timeZone: 'America/New_York',
  }).replace(/\s/g, ' ')

it('says where a session is, since when, and when it was used', () => {
  expect(line({})).toBe('At a desk · since 9:02 AM · used 11:38 AM · from 192.0.2.7')
  expect(line({ isThisOne: true, address: null })).toBe('This browser · since 9:02 AM · used 11:38 AM')
  expect(line({ kind: 'bay', device: 'Bay 2' })).toMatch(/^On the tablet Bay 2 · /)
})
