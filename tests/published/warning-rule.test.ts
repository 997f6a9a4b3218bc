/**
 * Source: 49 CFR 571.138 S4.2(a), read in a copy of the CFR page: the light comes on when the pressure is equal to or
 * less than the higher of 25 % below the maker's recommended cold pressure and the floor of a table. Here the first of
 * the two, and "equal to or less than"; the floors have a file of their own. The arithmetic was done by hand.
 */
import { atOrBelow } from '@bayledger/reckoning/pressure/threshold'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { gaugeKilopascals } from '@bayledger/reckoning/units/measured'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
const of = { makersTrigger: null, loadClass: 'SL', column: 'psi' } as const

published(
  { document: '49 CFR 571.138', section: 'S4.2(a)', edition: 'copy of the CFR page', certainty: 'read' },
  () => {
    it.each([
      ['SL', 32, 24],
      ['SL', 35, 26.25],
      ['XL', 41, 30.75],
      ['LT-E', 80, 60],
    ] as const)('%s, label %d psi: 25 %% below it is %d psi', (loadClass, label, expected) => {
      const point = warningPoint({ ...of, placard: psi(label), loadClass })
      expect(kilopascalsIn('psi', point)).toBeCloseTo(expected, 9)
    })

    it('SL, label 230 kPa: 25 % below it is 172.5 kPa', () => {
      expect(warningPoint({ ...of, placard: gaugeKilopascals(230), column: 'kPa' })).toBe(172.5)
    })

    it.each([
      [24, true],
      [23.9, true],
      [24.1, false],
      [24.5, false],
    ])('of a label of 32 psi, a tire at %d psi is low: %s', (gauge, low) => {
      expect(atOrBelow(psi(gauge), warningPoint({ ...of, placard: psi(32) }))).toBe(low)
    })

    it("a maker's own trigger goes before the share, above it or below", () => {
      expect(warningPoint({ ...of, placard: psi(35), makersTrigger: psi(28) })).toBe(psi(28))
      expect(warningPoint({ ...of, placard: psi(35), makersTrigger: psi(25) })).toBe(psi(25))
    })
  },
)
