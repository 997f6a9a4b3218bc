import { expect, it } from 'vitest'
import { newToken, tokenDigest } from './tokens.ts'

it('a token is 256 random bits, never the same twice, and its digest is SHA-256', () => {
  const drawn = Array.from({ length: 10_000 }, newToken)
  expect(new Set(drawn).size).toBe(drawn.length)
  for (const token of drawn) expect(token).toMatch(/^[\w-]{43}$/)
  // The example of FIPS 180-4 for the message "abc" (NIST, "Examples with Intermediate Values").
  expect(tokenDigest('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
})
