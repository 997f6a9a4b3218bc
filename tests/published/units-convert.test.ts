/**
 * Source: npm library convert 8.0.2 (MIT). Read in the package: it takes a psi for 6894.757 Pa, so agreement is asked
 * for within one part in a million. It has no torque; its pound-force and foot are multiplied here.
 */
import { distanceIn, inMillimeters, metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import { inNewtonMeters } from '@bayledger/reckoning/units/torque-units'
import { convert } from 'convert'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const agrees = (ours: number, other: number): void => {
  expect(Math.abs(ours - other)).toBeLessThanOrEqual(1e-6 * Math.abs(other))
}

published({ document: 'npm library convert', edition: '8.0.2', certainty: 'read' }, () => {
  it.each([20, 29, 33, 44, 72])('%d psi in kPa', (value) => {
    agrees(inKilopascals({ value, unit: 'psi' }), convert(value, 'psi').to('kPa'))
  })

  it.each([160, 230, 290])('%d kPa in psi', (value) => {
    agrees(pressureIn('psi', { value, unit: 'kPa' }), convert(value, 'kPa').to('psi'))
  })

  it.each([2.4, 3.5])('%d bar in psi', (value) => {
    agrees(pressureIn('psi', { value, unit: 'bar' }), convert(value, 'bar').to('psi'))
  })

  it.each([80, 120])('%d lbf·ft in N·m, by its pound-force and foot', (value) => {
    agrees(
      inNewtonMeters({ value, unit: 'lbf·ft' }),
      convert(value, 'lbf').to('N') * convert(1, 'ft').to('m'),
    )
  })

  it.each([35, 62])('%d lbf·in in N·m, by its pound-force and inch', (value) => {
    agrees(
      inNewtonMeters({ value, unit: 'lbf·in' }),
      convert(value, 'lbf').to('N') * convert(1, 'inch').to('m'),
    )
  })

  it.each([-23, 19, 70, 110])('%d °F in °C and K', (value) => {
    agrees(temperatureIn('C', { value, unit: 'F' }), convert(value, 'F').to('C'))
    agrees(inKelvin({ value, unit: 'F' }), convert(value, 'F').to('K'))
  })

  it.each([-10, 5, 45])('%d °C in °F and K', (value) => {
    agrees(temperatureIn('F', { value, unit: 'C' }), convert(value, 'C').to('F'))
    agrees(inKelvin({ value, unit: 'C' }), convert(value, 'C').to('K'))
  })

  it.each([25, 100])('%d mi in km, and as many km in mi', (value) => {
    agrees(distanceIn('km', { value, unit: 'mi' }), convert(value, 'mi').to('km'))
    agrees(distanceIn('mi', { value, unit: 'km' }), convert(value, 'km').to('mi'))
  })

  it.each([15, 17])('%d in in mm', (value) => {
    agrees(inMillimeters({ value, unit: 'in' }), convert(value, 'inch').to('mm'))
  })

  it.each([500, 5_280])('%d ft in m', (value) => {
    agrees(metersFromFeet(value), convert(value, 'ft').to('m'))
  })
})
