/**
 * Source: definitions that are exact: inch 25.4 mm and pound 0.45359237 kg (international yard and pound agreement,
 * 1959), standard gravity 9.80665 m/s² (3rd CGPM, 1901), bar 100 kPa, °F = 1.8 °C + 32, 0 °C = 273.15 K. The figures
 * were multiplied out from them by hand.
 */
import { distanceIn, inMillimeters, lengthIn, metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import { inNewtonMeters, torqueIn } from '@bayledger/reckoning/units/torque-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  {
    document: 'Exact definitions of inch, pound, standard gravity, bar and the temperature scales',
    edition: '1901 to 1959',
    certainty: 'computed from definition',
  },
  () => {
    it.each([
      [1, 6.894757293168],
      [20, 137.895146],
      [23, 158.579418],
      [26, 179.26369],
      [29, 199.947962],
      [30, 206.842719],
      [32, 220.632233],
      [33, 227.526991],
      [35, 241.316505],
      [36, 248.211263],
      [41, 282.685049],
      [44, 303.369321],
      [51, 351.632622],
      [65, 448.159224],
      [80, 551.580583],
    ])('%d psi is %d kPa', (psi, kPa) => {
      expect(inKilopascals({ value: psi, unit: 'psi' })).toBeCloseTo(kPa, 6)
    })

    it.each([
      [1, 14.503773773],
      [2.4, 34.809057055],
      [2.9, 42.060943942],
    ])('%d bar is %d psi', (bar, psi) => {
      expect(pressureIn('psi', { value: bar, unit: 'bar' })).toBeCloseTo(psi, 8)
    })

    it('2.4 bar is 240 kPa', () => {
      expect(inKilopascals({ value: 2.4, unit: 'bar' })).toBeCloseTo(240, 12)
    })

    it.each([
      [1, 1.3558179483314],
      [70, 94.907],
      [75, 101.686],
      [76, 103.042],
      [80, 108.465],
      [85, 115.245],
      [90, 122.024],
      [100, 135.582],
      [120, 162.698],
      [140, 189.815],
    ])('%d lbf·ft is %d N·m', (poundFeet, newtonMeters) => {
      expect(inNewtonMeters({ value: poundFeet, unit: 'lbf·ft' })).toBeCloseTo(newtonMeters, 3)
    })

    it.each([
      [1, 0.1129848290276],
      [62, 7.0050594],
    ])('%d lbf·in is %d N·m', (poundInches, newtonMeters) => {
      expect(inNewtonMeters({ value: poundInches, unit: 'lbf·in' })).toBeCloseTo(newtonMeters, 7)
    })

    it('120 lbf·in is 10 lbf·ft', () => {
      expect(torqueIn('lbf·ft', { value: 120, unit: 'lbf·in' })).toBeCloseTo(10, 12)
    })

    it.each([
      [1, 0.79375],
      [2, 1.5875],
      [3, 2.38125],
      [4, 3.175],
      [6, 4.7625],
      [8, 6.35],
      [10, 7.9375],
      [12, 9.525],
    ])('%d/32 in is %d mm', (thirtySeconds, millimeters) => {
      expect(inMillimeters({ value: thirtySeconds, unit: '1/32 in' })).toBeCloseTo(millimeters, 10)
    })

    it.each([
      [16, 406.4],
      [17, 431.8],
      [19.5, 495.3],
    ])('%d in is %d mm', (inches, millimeters) => {
      expect(inMillimeters({ value: inches, unit: 'in' })).toBeCloseTo(millimeters, 10)
    })

    it('32/32 in is an inch', () => {
      expect(lengthIn('in', { value: 32, unit: '1/32 in' })).toBeCloseTo(1, 14)
    })

    it.each([
      [1, 0.3048],
      [820, 249.936],
      [5_280, 1_609.344],
    ])('%d ft is %d m', (feet, meters) => {
      expect(metersFromFeet(feet)).toBeCloseTo(meters, 10)
    })

    it.each([
      [1, 1.609344],
      [50, 80.4672],
      [100, 160.9344],
    ])('%d mi is %d km', (miles, kilometers) => {
      expect(distanceIn('km', { value: miles, unit: 'mi' })).toBeCloseTo(kilometers, 10)
      expect(distanceIn('mi', { value: kilometers, unit: 'km' })).toBeCloseTo(miles, 10)
    })

    it.each([
      [68, 20],
      [32, 0],
      [-40, -40],
      [212, 100],
      [257, 125],
      [-459.67, -273.15],
    ])('%d °F is %d °C', (fahrenheit, celsius) => {
      expect(temperatureIn('C', { value: fahrenheit, unit: 'F' })).toBeCloseTo(celsius, 10)
      expect(temperatureIn('F', { value: celsius, unit: 'C' })).toBeCloseTo(fahrenheit, 10)
    })

    it.each([
      [68, 293.15],
      [32, 273.15],
      [-40, 233.15],
      [-459.67, 0],
    ])('%d °F is %d K', (fahrenheit, kelvin) => {
      expect(inKelvin({ value: fahrenheit, unit: 'F' })).toBeCloseTo(kelvin, 10)
    })

    it('20 °C is 293.15 K, which is 527.67 degrees Rankine', () => {
      expect(inKelvin({ value: 20, unit: 'C' })).toBeCloseTo(293.15, 10)
      expect(inKelvin({ value: 20, unit: 'C' }) * 1.8).toBeCloseTo(527.67, 10)
    })
  },
)
