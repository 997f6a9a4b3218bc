import { expect, it } from 'vitest'
import { areAlternatives } from './alternatives.ts'

const one = { bundleKey: 'one', alternativeTo: null }
const four = { bundleKey: 'four', alternativeTo: 'one' }
const plain = { bundleKey: 'plain', alternativeTo: 'one' }
const other = { bundleKey: 'other', alternativeTo: null }

it('excludes what replaces a bundle, and all that replace the same one', () => {
  expect(areAlternatives(one, four)).toBe(true)
  expect(areAlternatives(four, one)).toBe(true)
  expect(areAlternatives(four, plain)).toBe(true)
  expect(areAlternatives(one, other)).toBe(false)
  expect(areAlternatives(four, other)).toBe(false)
  expect(areAlternatives(four, four)).toBe(false)
})
