import { expect, it } from 'vitest'
import { coverWords } from './vehicle-words.ts'

it.each([
  ['covered', 76_000, 'covered until Jan 12, 2028, up to 76,000 mi'],
  ['covered', null, 'covered until Jan 12, 2028'],
  ['ended', 76_000, 'no longer covered (until Jan 12, 2028, up to 76,000 mi)'],
  ['person-decides', null, 'covered until Jan 12, 2028 at most; read the odometer and decide'],
] as const)('a sensor that is %s up to %s miles is said so', (cover, untilMiles, words) => {
  expect(coverWords({ cover, until: '2028-01-12', untilMiles })).toBe(words)
})
