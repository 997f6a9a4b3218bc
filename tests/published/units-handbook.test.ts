/**
 * Source: an engineering handbook's table of conversion factors (copy at issuhub.com, view 4884), read: a pound-force is
 * 4.448222 N, a pound-force a square inch 6.894757 kPa.
 */
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { inNewtonMeters } from '@bayledger/reckoning/units/torque-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const poundForce = 4.448222

published(
  {
    document: 'Engineering handbook, table of conversion factors',
    section: 'copy at issuhub.com, view 4884',
    certainty: 'read',
  },
  () => {
    it('a psi is 6.894757 kPa, as printed', () => {
      expect(Number(inKilopascals({ value: 1, unit: 'psi' }).toPrecision(7))).toBe(6.894757)
    })

    it('its pound-force over a square inch is the same psi', () => {
      expect(inKilopascals({ value: 1, unit: 'psi' })).toBeCloseTo(poundForce / 25.4 ** 2 / 1e-3, 5)
    })

    it('its pound-force at an arm of a foot is a pound-foot', () => {
      expect(inNewtonMeters({ value: 1, unit: 'lbf·ft' })).toBeCloseTo(poundForce * 0.3048, 6)
    })

    it('its pound-force at an arm of an inch is a pound-inch', () => {
      expect(inNewtonMeters({ value: 1, unit: 'lbf·in' })).toBeCloseTo(poundForce * 0.0254, 7)
    })
  },
)
