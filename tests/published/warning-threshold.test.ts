/**
 * Source: 49 CFR 571.138 S4.2(a): the higher of 25 % below the recommended cold pressure and Table 1, "equal to or
 * less than" (read in a copy of the CFR page). The floors of Table 1 are from memory, least sure in load range E; the
 * arithmetic on them was done by hand.
 */
import { atOrBelow } from '@bayledger/reckoning/pressure/threshold'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { kilopascalsPerPsi } from '@bayledger/reckoning/units/exact-factors'
import { gaugeKilopascals } from '@bayledger/reckoning/units/measured'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { describe, expect, it } from 'vitest'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })

describe('the warning point', () => {
  it.each([
    ['SL', 32, 24],
    ['SL', 35, 26.25],
    ['SL', 26, 20],
    ['XL', 30, 23],
    ['XL', 41, 30.75],
    ['LT-C', 35, 29],
    ['LT-D', 45, 38],
    ['LT-E', 55, 46],
    ['LT-E', 80, 60],
  ] as const)('of %s at %d psi is %d psi', (loadClass, placard, expected) => {
    const kPa = warningPoint({ placard: psi(placard), loadClass, column: 'psi' })
    expect(kPa / kilopascalsPerPsi).toBeCloseTo(expected, 9)
  })

  it.each([
    ['SL', 230, 172.5],
    ['SL', 180, 140],
    ['LT-E', 400, 320],
  ] as const)('of %s at %d kPa is %d kPa, from the table’s own column', (loadClass, placard, expected) => {
    expect(warningPoint({ placard: gaugeKilopascals(placard), loadClass, column: 'kPa' })).toBe(expected)
  })

  it('belongs to the low side: 24.0 psi on a label of 32 is low, 24.1 is not', () => {
    const warn = warningPoint({ placard: psi(32), loadClass: 'SL', column: 'psi' })
    expect(atOrBelow(psi(24), warn)).toBe(true)
    expect(atOrBelow(psi(24.004), warn)).toBe(true)
    expect(atOrBelow(psi(24.1), warn)).toBe(false)
  })
})
