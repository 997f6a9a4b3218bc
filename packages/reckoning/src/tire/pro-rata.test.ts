import { expect, it } from 'vitest'
import { measured } from '../../test-support/measured-size.ts'
import { proRata } from './pro-rata.ts'
import { spareSmallerBy } from './temporary-spare.ts'

it('charges for the share that is worn, to the cent, and nothing for a tire that is not worn', () => {
  expect(proRata(10, 6, 14_999)).toEqual({ wornPercent: 50, customerPaysCents: 7_500, creditCents: 7_499 })
  expect(proRata(10, 11, 14_999)).toEqual({ wornPercent: 0, customerPaysCents: 0, creditCents: 14_999 })
})

it('credits nothing for a tire at its wear bars, or for one that never was deeper', () => {
  expect(proRata(10, 2, 14_999)).toBeNull()
  expect(proRata(2, 2, 14_999)).toBeNull()
})

it('credits nothing for a tire that is older than its warranty lasts, however deep its tread', () => {
  const price = 14_999
  expect(proRata(10, 6, price, { years: 6, most: 6 })).toEqual(proRata(10, 6, price))
  expect(proRata(10, 6, price, { years: 6.1, most: 6 })).toBeNull()
})

it('says how much smaller a temporary spare is', () => {
  expect(spareSmallerBy(measured('225/65R17'), measured('T145/80D18'))).toBeCloseTo(4.846, 3)
  expect(spareSmallerBy(measured('225/65R17'), measured('225/65R17'))).toBe(0)
})
