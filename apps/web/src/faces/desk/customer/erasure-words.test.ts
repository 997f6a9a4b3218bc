import { expect, it } from 'vitest'
import { goesLines, obstacleWords, staysLines } from './erasure-words.ts'

const none = {
  ...{ cards: 0, vehicles: 0, words: 0, contacts: 0, shown: 0, photos: 0 },
  ...{ reports: 0, messages: 0, choices: 0, openings: 0, drafts: 0, refused: 0 },
}
const clock = { timeZone: 'America/New_York' }

it('What goes is counted, and what is not there is left out', () => {
  expect(goesLines({ ...none, cards: 1, photos: 6 })).toEqual(['1 customer card', '6 photos'])
})

it('What stays says until when the law keeps a report', () => {
  const stays = {
    orders: 1,
    entries: 70,
    reports: [{ number: 'T-2601-R1', until: '2029-01-12T16:40:00.000Z' }],
  }
  const lines = staysLines(stays, '2026-01-12T16:40:00.000Z', clock)
  expect(lines[0]).toContain('1 order with 70 entries')
  expect(lines[1]).toMatch(/^Sealed report T-2601-R1 until .*2029/)
  expect(staysLines({ orders: 0, entries: 0, reports: [] }, '2026-01-12T16:40:00.000Z', clock)).toHaveLength(
    1,
  )
})

it('What is in the way says what it is about', () => {
  expect(obstacleWords({ why: 'held', order: null, reason: 'a claim' })).toBe(
    'There is a legal hold on this customer: a claim',
  )
  expect(obstacleWords({ why: 'owed', order: 'T-2601', cents: -1_250 })).toBe(
    'Order T-2601: $12.50 was paid too much.',
  )
})
