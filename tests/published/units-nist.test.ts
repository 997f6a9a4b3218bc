/**
 * Source: NIST Special Publication 811 (2008), appendix B.8, factors listed alphabetically, seven figures. From memory:
 * the page was located and its body was not readable.
 */
import { inMillimeters, metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import { inNewtonMeters } from '@bayledger/reckoning/units/torque-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  {
    document: 'NIST SP 811, Guide for the Use of the SI',
    section: 'appendix B.8',
    edition: '2008',
    certainty: 'from memory',
  },
  () => {
    it.each([
      ['psi', 'kPa', inKilopascals({ value: 1, unit: 'psi' }), 6.894757],
      ['bar', 'kPa', inKilopascals({ value: 1, unit: 'bar' }), 100],
      ['psi', 'bar', pressureIn('bar', { value: 1, unit: 'psi' }), 0.06894757],
      ['foot pound-force', 'N·m', inNewtonMeters({ value: 1, unit: 'lbf·ft' }), 1.355818],
      ['inch pound-force', 'N·m', inNewtonMeters({ value: 1, unit: 'lbf·in' }), 0.1129848],
      ['inch', 'mm', inMillimeters({ value: 1, unit: 'in' }), 25.4],
      ['foot', 'm', metersFromFeet(1), 0.3048],
      ['mile', 'm', metersFromFeet(5_280), 1_609.344],
    ])('one %s in %s, to seven figures', (_, _unit, ours, printed) => {
      expect(Number(ours.toPrecision(7))).toBe(printed)
    })

    it('t/°C = (t/°F − 32)/1.8', () => {
      expect(temperatureIn('C', { value: 100, unit: 'F' })).toBe((100 - 32) / 1.8)
    })

    it('T/K = (t/°F + 459.67)/1.8', () => {
      expect(inKelvin({ value: 100, unit: 'F' })).toBe((100 + 459.67) / 1.8)
    })

    it('T/K = t/°C + 273.15', () => {
      expect(inKelvin({ value: 38, unit: 'C' })).toBe(38 + 273.15)
    })
  },
)
