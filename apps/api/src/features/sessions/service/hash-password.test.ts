import { describe, expect, it } from 'vitest'
import { hashPassword, passwordMatches } from './hash-password.ts'

const long = 'correct horse battery staple '.repeat(10)

describe('a stored password', () => {
  it('is argon2id at or above the minimum of OWASP’s Password Storage Cheat Sheet, with a salt of its own', async () => {
    const [one, other] = await Promise.all([hashPassword(long), hashPassword(long)])
    const [, memory, passes, lanes, salt = ''] =
      /^\$argon2id\$v=19\$m=(\d+),t=(\d+),p=(\d+)\$([^$]+)\$[^$]+$/.exec(one) ?? []
    expect(Number(memory)).toBeGreaterThanOrEqual(19 * 1024)
    expect(Number(passes)).toBeGreaterThanOrEqual(2)
    expect(Number(lanes)).toBe(1)
    // RFC 9106, section 4: 128 bits of salt.
    expect(Buffer.from(salt, 'base64')).toHaveLength(16)
    expect(one).not.toBe(other)
  })

  it('is compared exactly as it was typed: case, blanks and the last of 290 signs', async () => {
    const stored = await hashPassword(long)
    expect(await passwordMatches(long, stored)).toBe(true)
    for (const near of [long.toUpperCase(), long.trim(), long.slice(0, -2), `${long}x`])
      expect(await passwordMatches(near, stored)).toBe(false)
  })

  it('may have been stored at another cost, which its own text says', async () => {
    // From the tests of the reference implementation (phc-winner-argon2, src/test.c): 'password' with the salt 'somesalt'.
    const reference = '$argon2id$v=19$m=256,t=2,p=1$c29tZXNhbHQ$nf65EOgLrQMR/uIPnA4rEsF5h7TKyQwu9U1bMCHGi/4'
    expect(await passwordMatches('password', reference)).toBe(true)
    expect(await passwordMatches('differentpassword', reference)).toBe(false)
  })
})
