/**
 * The trade's own worked questions about pressure, answers computed from the gas law and the standard atmosphere by hand
 * to a tenth of a psi, at the sea unless an altitude is said. Law and atmosphere are checked against print in their own
 * files; caps, tolerances and gauge errors are common practice, no source.
 */
import { isLeak, lossBetween, lossUncertainty } from '@bayledger/reckoning/pressure/air-loss'
import { airAtSeaLevel, airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { lostToAltitude, shownTooLowBySeaLevelSensor } from '@bayledger/reckoning/pressure/altitude-change'
import { setTarget, type TireTemperature } from '@bayledger/reckoning/pressure/set-target'
import { marginOverWarning, temperatureThatWarns } from '@bayledger/reckoning/pressure/warning-margin'
import { warningPoint } from '@bayledger/reckoning/pressure/warning-point'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { kilopascalsApart } from '@bayledger/reckoning/units/measured'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, kelvinIn } from '@bayledger/reckoning/units/temperature-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { shownPsi } from './shifted.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
const fahrenheit = (value: number) => inKelvin({ value, unit: 'F' })
const airAt = (feet: number) => airPressureAtAltitude(metersFromFeet(feet))
const gauged = (value: number, degrees: number) => ({
  gauge: psi(value),
  temperature: fahrenheit(degrees),
  air: airAtSeaLevel,
})
const target = (
  placard: number,
  outdoors: number,
  tire: number,
  feet = 0,
  quality: TireTemperature['quality'] = 'measured',
) =>
  setTarget({
    placard: { value: placard, unit: 'psi' },
    sidewallMaximum: { value: placard > 45 ? 80 : 51, unit: 'psi' },
    outdoor: fahrenheit(outdoors),
    tire: { kelvin: fahrenheit(tire), quality },
    altitude: metersFromFeet(feet),
  })

published(
  {
    document: 'The trade’s own worked pressure questions',
    section: 'N1 to N13',
    certainty: 'computed from definition',
  },
  () => {
    it.each([
      [-20, 26.7],
      [0, 28.6],
      [20, 30.5],
      [40, 32.4],
      [88, 36.9],
      [110, 39],
    ])('N1: 35 psi set at 68 °F reads at %d °F %d psi', (outdoors, expected) => {
      expect(Math.abs(shownPsi(35, 68, outdoors) - expected)).toBeLessThan(0.051)
    })

    it.each([
      ['N2', 35, 20, 70, 0, 40.2],
      ['N3', 35, 50, 104, 0, 40.3],
      ['N9', 33, 19, 64, 820, 37.4],
      ['a spare in the bay', 60, 27, 55, 820, 64.3],
      ['in the bay for an hour', 35, 27, 52, 820, 37.5],
      ['the same on 36', 36, 27, 58, 820, 39.2],
      ['the same on 42', 42, 27, 58, 820, 45.6],
      ['a van’s rear', 72, 27, 60, 820, 77.8],
      ['a van’s front', 50, 27, 60, 820, 54.4],
    ])(
      '%s: label %d psi, %d °F outside, tire at %d °F, at %d ft: set %d',
      (_, label, out, tire, feet, set) => {
        expect(target(label, out, tire, feet)).toMatchObject({
          target: { value: set, unit: 'psi' },
          cappedBy: null,
        })
      },
    )

    it('N2: 40.2 psi in the bay read 35.0 outdoors', () => {
      expect(shownPsi(40.2, 70, 20)).toBeCloseTo(35, 1)
    })

    it('N4: a hot gauge of 35.0 at 110 °F is 28.9 cold at 40 °F', () => {
      expect(shownPsi(35, 110, 40)).toBeCloseTo(28.9, 1)
    })

    it.each([
      ['drop', 8.1],
      ['perDay', 0.9],
    ] as const)('N5: 35.0 at 68 °F and nine days later 24.5 at 38 °F: %s %d psi', (figure, expected) => {
      const loss = lossBetween(gauged(35, 68), gauged(24.5, 38), 9)
      expect(kilopascalsIn('psi', loss?.[figure] ?? kilopascalsApart(0))).toBeCloseTo(expected, 1)
    })

    it('N5: brought to 68 °F it holds 26.9, and weather by itself would have taken 2.8', () => {
      expect(shownPsi(24.5, 38, 68)).toBeCloseTo(26.9, 1)
      expect(35 - shownPsi(35, 68, 38)).toBeCloseTo(2.8, 1)
    })

    it.each([
      ['N6', 33, 7_000, 500, 29.9],
      ['N7', 35, 500, 7_000, 38.1],
    ])('%s: %d psi set at %d ft reads at %d ft %d psi', (_, set, there, here, expected) => {
      const reads = set - kilopascalsIn('psi', lostToAltitude(airAt(there), airAt(here)))
      expect(reads).toBeCloseTo(expected, 1)
    })

    it.each([
      [35, -23],
      [32, 5],
    ])('N8: %d psi at 70 °F lights by cold alone at %d °F', (gauge, expected) => {
      const warns = temperatureThatWarns({
        gauge: psi(gauge),
        at: fahrenheit(70),
        warn: psi(26.25),
        air: airAtSeaLevel,
      })
      expect(Math.abs(kelvinIn('F', warns) - expected)).toBeLessThan(1)
    })

    it('N10: set flat to its 33 psi in a bay of 64 °F it is 28.9 outdoors: 4.1 under the label, 4.2 over the lamp', () => {
      const cold = shownPsi(33, 64, 19, 820)
      const warn = warningPoint({ placard: psi(33), makersTrigger: null, loadClass: 'SL', column: 'psi' })
      expect(cold).toBeCloseTo(28.9, 1)
      expect(33 - cold).toBeCloseTo(4.1, 1)
      expect(Math.abs(kilopascalsIn('psi', marginOverWarning(psi(cold), warn)) - 4.2)).toBeLessThan(0.06)
    })

    it('N11: a van’s 72 psi would need 86.3 on a sidewall of 80: it gets 80 at most and is set again cold', () => {
      expect(shownPsi(72, 24, 104, 820)).toBeCloseTo(86.3, 1)
      expect(target(72, 24, 104, 820, 'estimated')).toMatchObject({
        target: { value: 80, unit: 'psi' },
        cappedBy: 'sidewall-maximum',
      })
    })

    it('N12: a sensor that refers to the sea reads 2.6 psi low at 5,280 ft', () => {
      expect(kilopascalsIn('psi', shownTooLowBySeaLevelSensor(airAt(5_280)))).toBeCloseTo(2.6, 1)
    })

    it('N13: 1.25 psi under the label all round, cold, leave 7.5 psi of margin', () => {
      const warn = warningPoint({ placard: psi(35), makersTrigger: null, loadClass: 'SL', column: 'psi' })
      expect(kilopascalsIn('psi', marginOverWarning(psi(33.75), warn))).toBeCloseTo(7.5, 9)
    })

    it.each([
      [1, 1.6],
      [0.5, 1],
    ])('gauges good to %d psi and temperatures to 5 °F: a drop is uncertain by %d psi', (gauge, expected) => {
      const uncertain = lossUncertainty(gauged(35, 68), {
        gauge: kilopascalsApart(psi(gauge)),
        temperature: 5 / 1.8,
      })
      expect(kilopascalsIn('psi', uncertain)).toBeCloseTo(expected, 1)
    })

    it('a drop of 1.5 psi is no leak by such gauges, one of 1.7 is', () => {
      const uncertain = kilopascalsApart(psi(1.6))
      const dropOf = (drop: number) => lossBetween(gauged(35, 68), gauged(35 - drop, 68), 10)
      const [less, more] = [dropOf(1.5), dropOf(1.7)]
      expect([less && isLeak(less, uncertain), more && isLeak(more, uncertain)]).toEqual([false, true])
    })

    it.each([
      [0, 14.7],
      [1_000, 14.17],
      [2_000, 13.66],
      [3_000, 13.17],
      [4_000, 12.69],
      [5_000, 12.23],
      [5_280, 12.1],
      [7_000, 11.34],
      [10_000, 10.11],
    ])('the open air at %d ft has %d psi', (feet, expected) => {
      expect(Math.abs(airAt(feet) / 6.894757 - expected)).toBeLessThan(0.006)
    })
  },
)
