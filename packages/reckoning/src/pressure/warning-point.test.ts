import * as fc from 'fast-check'
import { expect, it } from 'vitest'
import { LoadClass } from '../sheet.ts'
import { gaugeKilopascals } from '../units/measured.ts'
import { inKilopascals, kilopascalsIn } from '../units/pressure-units.ts'
import { warningFloor, warningFloors } from './warning-floors.ts'
import { warningPoint } from './warning-point.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
const of = { placard: psi(35), makersTrigger: null, loadClass: 'SL', column: 'psi' } as const

it('three quarters of the label are the warning point, unless the floor of the class is higher', () => {
  expect(kilopascalsIn('psi', warningPoint(of))).toBeCloseTo(26.25, 10)
  expect(kilopascalsIn('psi', warningPoint({ ...of, loadClass: 'LT-C' }))).toBeCloseTo(29, 10)
  expect(kilopascalsIn('psi', warningPoint({ ...of, placard: psi(26.66) }))).toBeCloseTo(20, 10)
  expect(kilopascalsIn('psi', warningPoint({ ...of, placard: psi(26.8) }))).toBeCloseTo(20.1, 10)
})

it('a tire of unknown class has no floor', () => {
  expect(kilopascalsIn('psi', warningPoint({ ...of, placard: psi(20), loadClass: null }))).toBeCloseTo(15, 10)
})

it('a maker’s trigger is used as given, even below the floor', () => {
  expect(warningPoint({ ...of, makersTrigger: psi(18) })).toBe(psi(18))
  expect(warningPoint({ ...of, makersTrigger: gaugeKilopascals(0) })).toBe(0)
})

it('a label goes by the column of its own unit, for each is rounded', () => {
  expect(warningFloor('SL', 'kPa')).toBe(140)
  expect(warningFloor('SL', 'psi')).toBeCloseTo(137.895, 3)
  expect(warningPoint({ ...of, placard: gaugeKilopascals(180), column: 'kPa' })).toBe(140)
})

it.each(Object.entries(warningFloors))(
  'the floor of %s says where it comes from and what is in doubt',
  (of, floor) => {
    expect(floor.source).toBe('49 CFR 571.138, Table 1')
    expect(floor.doubt).toBe(of === 'LT-E' ? 'least-sure' : 'from-memory')
  },
)

it('without a maker’s trigger it is never under the floor nor under three quarters of the label', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 70, max: 830, noNaN: true }).map(gaugeKilopascals),
      fc.constantFrom(...LoadClass.options),
      fc.constantFrom('psi' as const, 'kPa' as const),
      (placard, loadClass, column) => {
        const point = warningPoint({ placard, makersTrigger: null, loadClass, column })
        expect(point).toBeGreaterThanOrEqual(0.75 * placard)
        expect(point).toBeGreaterThanOrEqual(warningFloor(loadClass, column))
        expect([0.75 * placard, warningFloor(loadClass, column)]).toContain(point)
      },
    ),
    { seed: 20260112 },
  )
})
