/**
 * Source: 49 CFR part 565, check digit: table of worths, table of weights and the regulation's own sample VIN with its
 * products, their sum and remainder. Read in a copy of the text before 2008; later editions print the same method with
 * decimal remainders (from memory).
 */
import { vinCheckDigit, vinProducts } from '@bayledger/reckoning/vehicle/check-digit'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const sample = '1G4AH59H45G118341'

published(
  { document: '49 CFR 565', section: 'check digit', edition: 'before 2008', certainty: 'read' },
  () => {
    it.each(
      [8, 49, 24, 5, 32, 15, 18, 80, 0, 45, 56, 7, 6, 40, 12, 12, 2].map((product, index) => [
        index,
        product,
      ]),
    )('the sample’s product number %i (from 0) is %i', (index, product) => {
      expect(vinProducts(sample)[index]).toBe(product)
    })

    it('the sample’s products sum to 411', () => {
      expect(vinProducts(sample).reduce((sum, product) => sum + product)).toBe(411)
    })

    it('the sample’s check digit is 4', () => {
      expect(vinCheckDigit(sample)).toBe('4')
    })

    it('the sample is taken as a VIN', () => {
      expect(readVin(sample)).toEqual({ ok: true, value: { vin: sample, advice: [] } })
    })

    it.each(
      [...'A1B2C3D4E5F6G7H8J1K2L3M4N5P7R9S2T3U4V5W6X7Y8Z9'.matchAll(/(\D)(\d)/g)].map(([, letter, worth]) => [
        letter ?? '',
        Number(worth),
      ]),
    )('the letter %s is worth %i', (letter, worth) => {
      expect(vinProducts(`${letter}0000000000000000`)[0]).toBe(8 * Number(worth))
    })

    it.each([8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2].map((weight, index) => [index + 1, weight]))(
      'place %i weighs %i',
      (place, weight) => {
        const one = `${'0'.repeat(place - 1)}1${'0'.repeat(17 - place)}`
        expect(vinProducts(one)[place - 1]).toBe(weight)
      },
    )

    it('a remainder of 10 is written X', () => {
      expect(vinCheckDigit('00000000000000005')).toBe('X')
    })

    it.each([...'IOQ'])('the letter %s is in no VIN', (letter) => {
      expect(readVin(sample.replace('A', letter))).toMatchObject({ ok: false, fault: 'character' })
    })

    it.each([16, 18])('%i characters are no VIN', (length) => {
      expect(readVin(`${sample}1`.slice(0, length))).toMatchObject({ ok: false, fault: 'length' })
    })
  },
)
