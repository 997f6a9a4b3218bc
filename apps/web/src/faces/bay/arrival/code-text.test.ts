import { describe, expect, it } from 'vitest'
import { codeTextFault } from './code-text.ts'

describe('the text of stored codes', () => {
  it.each([
    '',
    'Wheel sensor, right rear: no signal',
    'C0750 RR no signal',
    'C0750, U0127-87; P0104:',
    'c1000 (old)',
  ])('is taken as it was shown: %s', (text) => {
    expect(codeTextFault(text)).toBeUndefined()
  })

  it.each(['C075', 'RR CO750', 'U01277', 'C4750', 'no signal C075G', 'X123'])(
    'is refused with words where a code in it is malformed: %s',
    (text) => {
      expect(codeTextFault(text)).toMatch(/is no trouble code. Allowed: a letter P, C, B or U/)
    },
  )
})
