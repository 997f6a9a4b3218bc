import { describe, expect, it } from 'vitest'
import { stepAt, stepOfCode, toBase32, totpCode } from './totp.ts'

const secret = Buffer.from('12345678901234567890')

describe('a code of an authenticator app', () => {
  // RFC 6238, appendix B, table 1, mode SHA1.
  it.each([
    [59, '94287082'],
    [1_111_111_109, '07081804'],
    [1_111_111_111, '14050471'],
    [1_234_567_890, '89005924'],
    [2_000_000_000, '69279037'],
    [20_000_000_000, '65353130'],
  ])('at %i seconds is %s', (seconds, code) => {
    expect(totpCode(secret, stepAt(new Date(seconds * 1000)), 8)).toBe(code)
  })

  // RFC 4226, appendix D: the first codes of six digits of the same secret.
  it('has six digits', () => {
    expect([0, 1, 2, 3].map((step) => totpCode(secret, step))).toEqual([
      '755224',
      '287082',
      '359152',
      '969429',
    ])
  })

  it('is good for its step and the two beside it', () => {
    const at = (step: number) => new Date(step * 30_000)
    const code = totpCode(secret, 100)
    expect([98, 99, 100, 101, 102].map((step) => stepOfCode(secret, code, at(step)))).toEqual([
      null,
      100,
      100,
      100,
      null,
    ])
    expect(stepOfCode(secret, '12345', at(100))).toBeNull()
  })
})

// RFC 4648, section 10, without the padding.
it.each([
  ['', ''],
  ['f', 'MY'],
  ['fo', 'MZXQ'],
  ['foo', 'MZXW6'],
  ['foob', 'MZXW6YQ'],
  ['fooba', 'MZXW6YTB'],
  ['foobar', 'MZXW6YTBOI'],
])('%s in base 32 is %s', (text, written) => {
  expect(toBase32(Buffer.from(text))).toBe(written)
})
