/**
 * Source: the ideal gas law at constant volume, (pg2 + pa) / (pg1 + pa) = T2 / T1. The tables were computed from it by
 * hand with pa = 14.69595 psi = 101.325 kPa and absolute zero at -459.67 °F and -273.15 °C.
 */
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { shownKilopascals, shownPsi } from './shifted.ts'

published(
  {
    document: 'Ideal gas law at constant volume',
    section: 'tables of pressure by temperature',
    certainty: 'computed from definition',
  },
  () => {
    it.each([
      [32, 68, 58, 31.115],
      [32, 68, 38, 29.345],
      [35, 70, 20, 30.309],
      [35, 70, 80, 35.938],
      [30, 90, 10, 23.495],
      [44, 68, -20, 34.211],
      [80, 68, 28, 72.822],
    ])('%d psi at %d °F is at %d °F %d psi', (psi, from, to, expected) => {
      expect(Math.abs(shownPsi(psi, from, to) - expected)).toBeLessThan(0.0006)
    })

    it.each([
      [32, 68, 0.885],
      [35, 70, 0.938],
      [30, 90, 0.813],
      [44, 68, 1.112],
      [80, 68, 1.795],
    ])('%d psi at %d °F gains %d psi by 10 °F', (psi, from, gained) => {
      expect(Math.abs(shownPsi(psi, from, from + 10) - psi - gained)).toBeLessThan(0.0006)
    })

    it.each([
      [220, 20, 0, 198.08],
      [230, 20, -10, 196.09],
      [250, 25, 5, 226.43],
      [240, 15, 45, 275.54],
      [290, 20, 50, 330.05],
    ])('%d kPa at %d °C is at %d °C %d kPa', (kPa, from, to, expected) => {
      expect(Math.abs(shownKilopascals(kPa, from, to) - expected)).toBeLessThan(0.006)
    })

    it.each([
      [220, 20, 10.96],
      [230, 20, 11.3],
      [250, 25, 11.78],
      [240, 15, 11.85],
      [290, 20, 13.35],
    ])('%d kPa at %d °C gains %d kPa by 10 °C', (kPa, from, gained) => {
      expect(Math.abs(shownKilopascals(kPa, from, from + 10) - kPa - gained)).toBeLessThan(0.006)
    })

    it('32 psi at 68 °F is not 30.181 at 38 °F, as gauge pressure alone would have it: that is 0.84 off', () => {
      expect(30.181 - shownPsi(32, 68, 38)).toBeCloseTo(0.84, 2)
    })
  },
)
