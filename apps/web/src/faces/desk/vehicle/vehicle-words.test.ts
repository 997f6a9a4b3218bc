import { expect, it } from 'vitest'
import { coverWords, daysSince } from './vehicle-words.ts'

it.each([
  ['covered', 76_000, 'covered until Jan 12, 2028, up to 76,000 mi'],
  ['covered', null, 'covered until Jan 12, 2028'],
  ['ended', 76_000, 'no longer covered (until Jan 12, 2028, up to 76,000 mi)'],
  ['person-decides', null, 'covered until Jan 12, 2028 at most; read the odometer and decide'],
] as const)('a sensor that is %s up to %s miles is said so', (cover, untilMiles, words) => {
  expect(coverWords({ cover, until: '2028-01-12', untilMiles })).toBe(words)
})

it('counts the days since a sensor by the shop’s calendar', () => {
  const zone = 'America/Chicago'
  expect(daysSince('2026-01-01T16:00:00.000Z', '2026-01-13T08:00:00.000Z', zone)).toBe('12 days')
  expect(daysSince('2026-01-12T03:00:00.000Z', '2026-01-12T07:00:00.000Z', zone)).toBe('1 day')
  expect(daysSince('2026-01-12T14:00:00.000Z', '2026-01-12T17:00:00.000Z', zone)).toBe('0 days')
  expect(daysSince('2026-03-01T12:00:00.000Z', '2026-03-15T12:00:00.000Z', zone)).toBe('14 days')
})
