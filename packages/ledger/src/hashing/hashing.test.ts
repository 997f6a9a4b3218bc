import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sha256Hex as hashAnywhere, hmacSha256Hex as hmacAnywhere } from './anywhere.ts'
import { sha256Hex as hashOnNode, hmacSha256Hex as hmacOnNode } from './node.ts'

const anywhere = { hash: hashAnywhere, hmac: hmacAnywhere }
const node = { hash: hashOnNode, hmac: hmacOnNode }

const words = fc
  .array(fc.integer({ min: 0, max: 0xd7ff }), { maxLength: 90 })
  .map((codes) => String.fromCodePoint(...codes))

describe('the hashes that the server and the browser make', () => {
  it('are the same for any text', () => {
    fc.assert(
      fc.property(words, (text) => {
        expect(node.hash(text)).toBe(anywhere.hash(text))
      }),
    )
  })

  it('are the same for any text under any key', () => {
    fc.assert(
      fc.property(words, fc.uint8Array({ maxLength: 80 }), (text, key) => {
        expect(node.hmac(text, key)).toBe(anywhere.hmac(text, key))
      }),
    )
  })

  it('are the ones of the published examples (FIPS 180-4 examples, RFC 4231 test case 2)', () => {
    for (const { hash, hmac } of [node, anywhere]) {
      expect(hash('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
      expect(hmac('what do ya want for nothing?', new TextEncoder().encode('Jefe'))).toBe(
        '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
      )
    }
  })
})
