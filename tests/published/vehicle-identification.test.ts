/**
 * Source: 49 CFR part 565 (vehicle identification number requirements), check digit by table and weights; the
 * regulation's own sample VIN, read in a copy of its text before 2008. The other numbers are invented and their
 * sums were computed by hand from the same table.
 */
import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { readVin, vinCheckDigit } from '@bayledger/reckoning/vehicle/vin'
import { describe, expect, it } from 'vitest'

describe('the check digit of 49 CFR 565', () => {
  it('of the regulation’s own sample is 4', () => {
    expect(vinCheckDigit('1G4AH59H45G118341')).toBe('4')
    expect(readVin('1g4ah59h4 5g118341')).toMatchObject({ ok: true, vin: '1G4AH59H45G118341' })
  })

  it.each([
    '1ZZZZZZZ6AZ000001',
    '2ZZAA00A1MZ000123',
    '1ZZ1234A7R1000017',
    '1ZZ12AB4XR0000004',
    '4ZZ12A459Y0123456',
    '1ZZ9876BXB1000002',
    '11111111111111111',
  ])('of %s is right', (vin) => {
    expect(readVin(vin)).toMatchObject({ ok: true, advice: null })
  })

  it('finds every single misread digit', () => {
    const sample = '1ZZ9876BXB1000002'
    for (const place of [3, 4, 5, 6, 10, 16])
      for (const digit of '0123456789') {
        if (sample[place] === digit) continue
        expect(readVin(`${sample.slice(0, place)}${digit}${sample.slice(place + 1)}`).ok).toBe(false)
      }
  })

  it('is advice only for a vehicle that was not made for North America', () => {
    expect(readVin('ZZZ9876B0B1000002')).toMatchObject({
      ok: true,
      advice: expect.stringContaining('ninth place'),
    })
  })
})

// Codes of the tenth place: read in two published tables; the seventh-place rule: 49 CFR 565.15(b), read.
describe('the model year', () => {
  it.each([
    ['1G4AH59H45G118341', 2005],
    ['1ZZZZZZZ6AZ000001', 2010],
    ['2ZZAA00A1MZ000123', 1991],
    ['1ZZ1234A7R1000017', 1994],
    ['1ZZ12AB4XR0000004', 2024],
    ['4ZZ12A459Y0123456', 2000],
    ['1ZZ9876BXB1000002', 1981],
  ])('that %s names is %d', (vin, year) => {
    expect(modelYear(vin)).toBe(year)
  })

  it.each(['0', 'U', 'Z'])('is unknown where the tenth place holds %s', (code) => {
    expect(modelYear(`1ZZ12AB4X${code}0000004`)).toBeNull()
  })
})

describe('a VIN', () => {
  it.each([
    ['too short', '1ZZ9876BXB100000', 'length'],
    ['with the letter O', '1ZZ9876BXB1OOOOO2', 'character'],
    ['with a wrong check digit', '1ZZ9876B0B1000002', 'check-digit'],
  ])('%s is refused with words that tell what to do', (_, vin, fault) => {
    expect(readVin(vin)).toMatchObject({ ok: false, fault, do: expect.stringMatching(/\w/) })
  })
})
