/**
 * What every shop says of pressure and weather: common practice without a source. That "about" is half a psi, and which
 * tire was low before, is our convention.
 */
import { atOrBelow } from '@bayledger/reckoning/pressure/threshold'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { ownConvention, published } from './published.ts'
import { shownPsi } from './shifted.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })

published(
  {
    document: 'What shops say of pressure and weather',
    certainty: ownConvention,
  },
  () => {
    it('32 psi reads about 31 after 10 °F colder', () => {
      expect(Math.abs(shownPsi(32, 70, 60) - 31)).toBeLessThan(0.5)
    })

    it('32 psi reads about 29 after 30 °F colder', () => {
      expect(Math.abs(shownPsi(32, 70, 40) - 29)).toBeLessThan(0.5)
    })

    it('a tire gains about 4 psi once it is driven warm', () => {
      expect(Math.abs(shownPsi(35, 60, 105) - 39)).toBeLessThan(0.5)
    })

    it('33 psi set in a 70 °F bay are about 28 on a 20 °F morning', () => {
      expect(Math.abs(shownPsi(33, 70, 20) - 28.5)).toBeLessThan(0.5)
    })

    it('a cold night lights the lamp of a tire that was low before, and not of one set right', () => {
      const warn = warningPoint({ placard: psi(35), makersTrigger: null, loadClass: 'SL', column: 'psi' })
      expect(atOrBelow(psi(shownPsi(35, 60, 20)), warn)).toBe(false)
      expect(atOrBelow(psi(shownPsi(29, 60, 20)), warn)).toBe(true)
    })
  },
)
