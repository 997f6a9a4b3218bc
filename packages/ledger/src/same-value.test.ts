import fc from 'fast-check'
import { expect, it } from 'vitest'
import { canonicalText } from './digests.ts'
import { isSameValue } from './same-value.ts'

const json = fc.jsonValue({ maxDepth: 3 }).map((value) => JSON.parse(JSON.stringify(value)) as unknown)

/** The same value with the members of every object in the other order, and one that is undefined. */
const turned = (value: unknown): unknown => {
  if (value === null || typeof value !== 'object') return value
  if (Array.isArray(value)) return value.map(turned)
  const members = Object.entries(value).map(([key, member]) => [key, turned(member)] as const)
  return { ...Object.fromEntries(members.toReversed()), 'not there': undefined }
}

it('says of any two values what their canonical texts say', () => {
  fc.assert(
    fc.property(json, json, (one, other) => {
      expect(isSameValue(one, other)).toBe(canonicalText(one) === canonicalText(other))
      expect(isSameValue(one, turned(one))).toBe(true)
    }),
    { seed: 20_260_112, numRuns: 500 },
  )
})

it('tells values apart that differ in one place', () => {
  expect(isSameValue({ a: [1, { b: null }] }, { a: [1, { b: 0 }] })).toBe(false)
  expect(isSameValue({ a: 1 }, { a: 1, b: 2 })).toBe(false)
  expect(isSameValue({ a: undefined, b: 1 }, { b: 1 })).toBe(true)
  expect(isSameValue([1, 2], [1])).toBe(false)
  expect(isSameValue({}, [])).toBe(false)
})
