import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { vinWords } from '../words/typed-text.ts'
import { makerCode } from './maker-code.ts'
import { modelYear } from './model-year.ts'
import { vinRegion } from './region.ts'
import { readVin } from './vin.ts'

const sample = '1ZZ12AB4XR0000004'
const refusal = (typed: string) => {
  const read = readVin(typed)
  return read.ok ? null : read
}

describe('a typed VIN', () => {
  it('is taken with blanks, hyphens and small letters', () => {
    expect(readVin(' 1zz12ab4x-r0000004\t')).toEqual({ ok: true, value: { vin: sample, advice: [] } })
  })

  it('is refused for its length with how many characters it has', () => {
    for (const [typed, length] of [
      ['', 0],
      [sample.slice(1), 16],
      [`${sample}1`, 18],
    ] as const)
      expect(refusal(typed)).toMatchObject({
        fault: 'length',
        found: typed,
        allowed: `17 characters; this one has ${length}`,
      })
  })

  it.each([
    ['I', 'Is it a 1?'],
    ['O', 'Is it a 0?'],
    ['Q', 'Is it a 0 or a 9?'],
    ['*', 'Read it again.'],
  ])('is refused for the character %s, which it names', (odd, words) => {
    expect(refusal(sample.replace('R', odd))).toMatchObject({
      fault: 'character',
      do: `"${odd}" is not used in a VIN. ${words}`,
    })
  })

  it('is refused for its check digit where it is North American, with the digit it needs', () => {
    expect(refusal('1ZZ12AB40R0000004')).toMatchObject({
      fault: 'check-digit',
      allowed: 'the check digit X at the ninth place, not 0',
    })
    for (const first of '12345') expect(refusal(`${first}ZZ12AB4ZR0000004`)?.fault).toBe('check-digit')
  })

  it.each(['0', '6', '9', 'A', 'J', 'S', 'Z'])(
    'is advised on its check digit where it begins with %s',
    (first) => {
      expect(readVin(`${first}ZZ12AB4ZR0000004`)).toMatchObject({
        ok: true,
        value: { advice: [expect.stringContaining('Outside North America')] },
      })
    },
  )

  it.each([...'0123456789'])('of nothing but %s passes the arithmetic, with advice', (digit) => {
    expect(readVin(digit.repeat(17))).toMatchObject({
      ok: true,
      value: { advice: [expect.stringContaining(`${digit} seventeen times`)] },
    })
  })

  it('of one letter throughout is no dummy, only without its check digit', () => {
    const read = readVin('A'.repeat(17))
    expect(read.ok && read.value.advice).toHaveLength(1)
  })

  it('never makes the reader throw, and what is taken is read the same again', () => {
    const nearly = fc
      .string({
        unit: fc.constantFrom(...'0123456789ABCDEFGHJKLMNPRSTUVWXYZIOQ -a'),
        minLength: 15,
        maxLength: 19,
      })
      .chain((text) => fc.constantFrom(text, text.slice(0, 17), `J${text.slice(0, 16)}`))
    fc.assert(
      fc.property(fc.oneof(nearly, fc.string({ unit: 'binary', maxLength: 40 })), (typed) => {
        const read = readVin(typed)
        if (read.ok) {
          expect(read.value.vin).toMatch(/^[A-HJ-NPR-Z0-9]{17}$/)
          expect(readVin(read.value.vin)).toEqual(read)
        } else expect(read.allowed.length * read.do.length).toBeGreaterThan(0)
      }),
      { seed: 3_779, numRuns: 10_000 },
    )
  })
})

describe('what a VIN says', () => {
  it('is no region and no year where there is nothing to read', () => {
    expect(vinRegion('')).toBeNull()
    expect(vinRegion('O')).toBeNull()
    expect(modelYear('1ZZ12A')).toBeNull()
    expect(modelYear('')).toBeNull()
  })

  it('is a year of the cycle that the seventh place determines, for the vehicles to which that applies', () => {
    expect(modelYear(sample)).toBe(2024)
    expect(modelYear('1ZZ1234A7R1000017')).toBe(1994)
    expect(vinWords.modelYearHoldsFor).toContain('4,536 kg')
  })

  it('is a year from the first code of a round to its last', () => {
    expect(modelYear('1ZZ000700A0000000')).toBe(1980)
    expect(modelYear('1ZZ00070090000000')).toBe(2009)
    expect(modelYear('1ZZ000B00A0000000')).toBe(2010)
    expect(modelYear('1ZZ000B0090000000')).toBe(2039)
    for (const code of '0UZ') expect(modelYear(`1ZZ000B00${code}0000000`)).toBeNull()
  })

  it.each([
    ['1', 'United States'],
    ['2', 'Canada'],
    ['3', 'Mexico'],
    ['4', 'United States'],
    ['5', 'United States'],
    ['J', null],
    ['W', null],
  ])('is the country where it begins with %s: %s', (first, country) => {
    expect(vinRegion(first)?.country).toBe(country)
  })

  it('is the maker, in six characters where it builds few vehicles', () => {
    expect(makerCode(sample)).toEqual({ code: '1ZZ', lowVolume: false })
    expect(makerCode('1Z9Z2AB4XR0ABC004')).toEqual({ code: '1Z9ABC', lowVolume: true })
  })
})
