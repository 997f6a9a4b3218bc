import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTroubleCode, troubleCodesIn, troubleCodeText } from './trouble-code.ts'

describe('two bytes of a trouble code', () => {
  it('are a letter, a digit to 3 and three hexadecimal digits', () => {
    expect(troubleCodeText(0xc1, 0x27)).toBe('U0127')
    expect(troubleCodeText(0x0a, 0x0f)).toBe('P0A0F')
    expect(troubleCodeText(0x30, 0x01)).toBe('P3001')
    expect(troubleCodeText(0xff, 0xff)).toBe('U3FFF')
  })

  it('are no code where both are zero, and one where either is not', () => {
    expect(troubleCodeText(0, 0)).toBeNull()
    expect(troubleCodeText(0, 1)).toBe('P0001')
    expect(troubleCodeText(1, 0)).toBe('P0100')
  })

  it('never count more than eight bits each', () => {
    expect(troubleCodeText(0x1_c1, 0x1_27)).toBe('U0127')
  })
})

describe('a run of bytes', () => {
  it('is its codes without the padding', () => {
    expect(troubleCodesIn([0xc1, 0x27, 0, 0, 0x47, 0x50])).toEqual({ codes: ['U0127', 'C0750'], note: null })
    expect(troubleCodesIn([])).toEqual({ codes: [], note: null })
  })

  it('loses a last byte without its other half, and says so', () => {
    expect(troubleCodesIn([0xc1, 0x27, 0x47])).toEqual({
      codes: ['U0127'],
      note: 'Of 3 bytes the last is alone and was left out: a code has two. Read the codes again.',
    })
  })
})

describe('a typed trouble code', () => {
  it.each([
    [' u0127 ', 'U0127', [0xc1, 0x27], null],
    ['C0750-13', 'C0750-13', [0x47, 0x50], 0x13],
    ['c0750:ff', 'C0750-FF', [0x47, 0x50], 0xff],
    ['B3FFF 00', 'B3FFF-00', [0xbf, 0xff], 0],
    ['P0001', 'P0001', [0x00, 0x01], null],
  ] as const)('%s is taken as %s', (typed, text, bytes, failureType) => {
    expect(readTroubleCode(typed)).toEqual({ ok: true, value: { text, bytes, failureType } })
  })

  it.each([
    ['', 'empty', /as the reader shows it/],
    ['C127', 'no-letter', /it is U0127/],
    ['47 50', 'no-letter', /it is C0750/],
    ['00-00', 'no-letter', /padding/],
    ['P0000', 'padding', /no code here/],
    ['P0000-13', 'padding', /no code here/],
    ['C4750', 'shape', /O is a 0/],
    ['CO750', 'shape', /O is a 0/],
    ['C07501', 'shape', /O is a 0/],
    ['XC0750', 'shape', /O is a 0/],
    ['C0750-1', 'shape', /O is a 0/],
    ['D0750', 'shape', /O is a 0/],
  ] as const)('"%s" is refused: %s', (typed, fault, words) => {
    expect(readTroubleCode(typed)).toMatchObject({
      ok: false,
      fault,
      found: typed,
      allowed: expect.stringContaining('such as U0127'),
      do: expect.stringMatching(words),
    })
  })

  it('never makes the reader throw, and what is taken is read the same again', () => {
    const nearly = fc
      .tuple(
        fc.constantFrom(...'PCBUpcbuX0'),
        fc.constantFrom(...'0123456'),
        fc.string({ unit: fc.constantFrom(...'0123456789ABCDEFabcdefGO'), minLength: 2, maxLength: 4 }),
        fc.constantFrom('', '-13', ':F0', ' 0', '-GG'),
      )
      .map((parts) => parts.join(''))
    fc.assert(
      fc.property(fc.oneof(nearly, fc.string({ unit: 'binary', maxLength: 20 })), (typed) => {
        const read = readTroubleCode(typed)
        if (!read.ok) {
          expect(read.allowed.length * read.do.length).toBeGreaterThan(0)
          return
        }
        expect(readTroubleCode(read.value.text)).toEqual(read)
        expect(troubleCodeText(...read.value.bytes)).toBe(read.value.text.slice(0, 5))
      }),
      { seed: 2_012, numRuns: 10_000 },
    )
  })
})
