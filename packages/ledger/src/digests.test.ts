import { createHash, createHmac } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { canonicalText, digestOf, sha256Hex, sideDigest } from './digests.ts'

describe('canonical text', () => {
  it("is the worked sample of RFC 8785, section 3.2.2 to 3.2.3 (from the standard's text)", () => {
    const sample = JSON.parse(
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
        '"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    )
    expect(canonicalText(sample)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
        '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    )
  })

  it('does not depend on the order in which members were written', () => {
    expect(digestOf({ a: 1, b: [2, { d: 3, c: 4 }] })).toBe(digestOf({ b: [2, { c: 4, d: 3 }], a: 1 }))
  })

  it('refuses what has no JSON form', () => {
    expect(() => canonicalText(undefined)).toThrow(/without a JSON form/)
  })
})

describe('digests', () => {
  it("agree with FIPS 180-4's sample and with the platform's own SHA-256", () => {
    expect(sha256Hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
    expect(sha256Hex('Tür, 35 psi')).toBe(createHash('sha256').update('Tür, 35 psi', 'utf8').digest('hex'))
  })

  it("of personal words agree with RFC 4231's second case and with the platform's own HMAC", () => {
    const key = new TextEncoder().encode('Jefe')
    expect(sideDigest('what do ya want for nothing?', key)).toBe(
      '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
    )
    const salt = new Uint8Array(32).fill(7)
    expect(sideDigest('Wren', salt)).toBe(createHmac('sha256', salt).update('Wren').digest('hex'))
  })
})
