/**
 * Source: invented VINs whose sums and check digits were computed by hand from the tables of 49 CFR 565. What is said
 * of other markets (no check digit needed) is from memory.
 */
import { vinCheckDigit, vinProducts } from '@bayledger/reckoning/vehicle/check-digit'
import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const numbers = [
  ['1G4AH59H45G118341', 411, '4', 2005],
  ['1ZZZZZZZ6AZ000001', 424, '6', 2010],
  ['2ZZAA00A1MZ000123', 276, '1', 1991],
  ['1ZZ1234A7R1000017', 271, '7', 1994],
  ['1ZZ12AB4XR0000004', 274, 'X', 2024],
  ['4ZZ12A459Y0123456', 372, '9', 2000],
  ['1ZZ9876BXB1000002', 285, 'X', 1981],
  ['11111111111111111', 89, '1', 2001],
  ['00000000000000000', 0, '0', null],
] as const

published(
  {
    document: '49 CFR 565',
    section: 'check digit, numbers computed by hand',
    certainty: 'computed from definition',
  },
  () => {
    it.each(numbers)('the products of %s sum to %i', (vin, sum) => {
      expect(vinProducts(vin).reduce((total, product) => total + product)).toBe(sum)
    })

    it.each(numbers)('%s with the sum %i has the check digit %s and is taken', (vin, _sum, digit) => {
      expect(vinCheckDigit(vin)).toBe(digit)
      expect(readVin(vin)).toMatchObject({ ok: true, value: { vin } })
    })

    it.each(numbers)('%s (sum %i, check digit %s) names the year %s', (vin, _sum, _digit, year) => {
      expect(modelYear(vin)).toBe(year)
    })

    it.each(['11111111111111111', '00000000000000000'])(
      '%s passes the arithmetic, as a known dummy',
      (vin) => {
        const read = readVin(vin)
        expect(read.ok && read.value.advice.join()).toMatch(/no vehicle carries it/)
      },
    )

    it.each([3, 4, 5, 6, 10, 16])('a digit misread at place %i (from 0) is always found', (place) => {
      const vin = '1ZZ9876BXB1000002'
      for (const digit of '0123456789')
        if (vin[place] !== digit)
          expect(readVin(vin.slice(0, place) + digit + vin.slice(place + 1)).ok).toBe(false)
    })
  },
)
