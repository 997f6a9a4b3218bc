/**
 * Source: 49 CFR 571.138, Table 1, minimum activation pressure. FROM MEMORY, least sure in load range E: the table itself
 * was not read. It prints kPa and psi, each rounded, so a label goes by the column of its own unit.
 */
import { warningFloor, warningFloors } from '@bayledger/reckoning/pressure/warning-floors'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { gaugeKilopascals } from '@bayledger/reckoning/units/measured'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })

const table = [
  ['SL', 140, 20],
  ['XL', 160, 23],
  ['LT-C', 200, 29],
  ['LT-D', 260, 38],
  ['LT-E', 320, 46],
] as const

published({ document: '49 CFR 571.138', section: 'Table 1', certainty: 'from memory' }, () => {
  it.each(table)('%s has a floor of %d kPa', (loadClass, kPa) => {
    expect(warningFloor(loadClass, 'kPa')).toBe(kPa)
  })

  it.each(table)('%s has (beside %d kPa) a floor of %d psi', (loadClass, _, floor) => {
    expect(kilopascalsIn('psi', warningFloor(loadClass, 'psi'))).toBeCloseTo(floor, 12)
  })

  it.each([
    ['SL', 26, 20],
    ['XL', 30, 23],
    ['LT-C', 35, 29],
    ['LT-D', 45, 38],
    ['LT-E', 55, 46],
  ] as const)('%s, label %d psi: the floor of %d psi is the higher', (loadClass, label, expected) => {
    const point = warningPoint({ placard: psi(label), makersTrigger: null, loadClass, column: 'psi' })
    expect(kilopascalsIn('psi', point)).toBeCloseTo(expected, 9)
  })

  it.each([
    ['SL', 180, 140],
    ['LT-E', 400, 320],
  ] as const)('%s, label %d kPa: the floor of %d kPa is the higher', (loadClass, label, expected) => {
    const placard = gaugeKilopascals(label)
    expect(warningPoint({ placard, makersTrigger: null, loadClass, column: 'kPa' })).toBe(expected)
  })

  it('says of every row where it comes from and how far it may be trusted', () => {
    for (const floor of Object.values(warningFloors)) {
      expect(floor.source).toContain('571.138')
      expect(floor.doubt).toMatch(/^(from-memory|least-sure)$/)
    }
    expect(warningFloors['LT-E'].doubt).toBe('least-sure')
  })
})
