/**
 * Source: npm library js-quantities 1.8.0 (MIT). Read in the package: it takes a psi for 6894.76 Pa and a pound-force
 * for 4.448222 N, so agreement is required within one part in a million.
 */
import { distanceIn, inMillimeters, metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import { inNewtonMeters, torqueIn } from '@bayledger/reckoning/units/torque-units'
import quantity from 'js-quantities'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const theirs = (value: number, from: string, to: string): number => quantity(value, from).to(to).scalar

const agrees = (ours: number, other: number): void => {
  expect(Math.abs(ours - other)).toBeLessThanOrEqual(1e-6 * Math.abs(other))
}

published({ document: 'npm library js-quantities', edition: '1.8.0', certainty: 'read' }, () => {
  it.each([20, 26.25, 35, 51, 80])('%d psi in kPa', (value) => {
    agrees(inKilopascals({ value, unit: 'psi' }), theirs(value, 'psi', 'kPa'))
  })

  it.each([140, 220, 240, 350])('%d kPa in psi', (value) => {
    agrees(pressureIn('psi', { value, unit: 'kPa' }), theirs(value, 'kPa', 'psi'))
  })

  it.each([2.2, 2.9])('%d bar in psi', (value) => {
    agrees(pressureIn('psi', { value, unit: 'bar' }), theirs(value, 'bar', 'psi'))
  })

  it.each([35, 65])('%d psi in bar', (value) => {
    agrees(pressureIn('bar', { value, unit: 'psi' }), theirs(value, 'psi', 'bar'))
  })

  it.each([76, 100, 140])('%d lbf·ft in N·m', (value) => {
    agrees(inNewtonMeters({ value, unit: 'lbf·ft' }), theirs(value, 'lbf*ft', 'N*m'))
  })

  it.each([27, 62])('%d lbf·in in N·m', (value) => {
    agrees(inNewtonMeters({ value, unit: 'lbf·in' }), theirs(value, 'lbf*in', 'N*m'))
  })

  it.each([108, 160])('%d N·m in lbf·ft', (value) => {
    agrees(torqueIn('lbf·ft', { value, unit: 'N·m' }), theirs(value, 'N*m', 'lbf*ft'))
  })

  it.each([-20, 20, 68, 104])('%d °F in °C and K', (value) => {
    agrees(temperatureIn('C', { value, unit: 'F' }), theirs(value, 'tempF', 'tempC'))
    agrees(inKelvin({ value, unit: 'F' }), theirs(value, 'tempF', 'tempK'))
  })

  it.each([-10, 25, 125])('%d °C in °F and K', (value) => {
    agrees(temperatureIn('F', { value, unit: 'C' }), theirs(value, 'tempC', 'tempF'))
    agrees(inKelvin({ value, unit: 'C' }), theirs(value, 'tempC', 'tempK'))
  })

  it.each([50, 88_141])('%d mi in km, and as many km in mi', (value) => {
    agrees(distanceIn('km', { value, unit: 'mi' }), theirs(value, 'mi', 'km'))
    agrees(distanceIn('mi', { value, unit: 'km' }), theirs(value, 'km', 'mi'))
  })

  it.each([16, 33])('%d in in mm', (value) => {
    agrees(inMillimeters({ value, unit: 'in' }), theirs(value, 'in', 'mm'))
  })

  it.each([820, 7_000])('%d ft in m', (value) => {
    agrees(metersFromFeet(value), theirs(value, 'ft', 'm'))
  })
})
