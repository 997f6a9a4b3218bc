/**
 * Source: "Wheel load capacity in kg with tyre pressure in bars", Automotive Engineering: Powertrain, Chassis System and
 * Vehicle Body (2009), chapter 10.1, page 290; read in five of its rows. A power of 0.8 from 2.5 bar, rounded to 5 kg,
 * yields each of its cells. That formula lives in this test alone: other standards' tables follow other powers, so the
 * program never decides a load by it, but asks for the table values.
 */
import { type LoadCheckOf, loadCheck } from '@bayledger/reckoning/tire/load-check'
import { loadOfIndex } from '@bayledger/reckoning/tire/load-index'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const pressures = [1.5, 1.6, 1.7, 1.8, 1.9, 2.0, 2.1, 2.2, 2.3, 2.4, 2.5]
const printed: readonly (readonly [number, readonly number[]])[] = [
  [69, [215, 225, 240, 250, 260, 270, 285, 295, 305, 315, 325]],
  [75, [255, 270, 285, 300, 310, 325, 335, 350, 360, 375, 387]],
  [80, [300, 315, 330, 345, 360, 375, 390, 405, 420, 435, 450]],
  [84, [330, 350, 365, 385, 400, 420, 435, 450, 470, 485, 500]],
  [87, [360, 380, 400, 420, 440, 455, 475, 490, 510, 525, 545]],
]
const cells = printed.flatMap(([index, loads]) =>
  loads.map((load, column) => [index, pressures[column] ?? Number.NaN, load] as const),
)

/** The last column prints the load index itself; the others are rounded to 5 kg. */
const byPower = (index: number, bar: number, power: number): number => {
  const most = loadOfIndex(index) ?? Number.NaN
  return bar === 2.5 ? most : Math.round((most * (bar / 2.5) ** power) / 5) * 5
}

const withoutTable = (index: number, bar: number): LoadCheckOf => {
  const tire = { passenger: true, loadIndex: index, speed: 'T', tableLoad: null } as const
  return {
    vehicle: 'car',
    newOnLabel: false,
    original: tire,
    fitted: { ...tire, sidewallMaximum: { value: 3, unit: 'bar' } },
    chosen: { value: bar, unit: 'bar' },
  }
}

published(
  {
    document: 'Automotive Engineering: Powertrain, Chassis System and Vehicle Body',
    section: 'chapter 10.1, page 290',
    edition: '2009',
    certainty: 'read',
  },
  () => {
    it.each(cells)('load index %i at %d bar carries %i kg', (index, bar, load) => {
      expect(byPower(index, bar, 0.8)).toBe(load)
    })

    it.each(printed.map(([index, loads]) => [index, loads[10] ?? 0] as const))(
      'load index %i at full pressure carries %i kg, as in our table',
      (index, load) => {
        expect(loadOfIndex(index)).toBe(load)
      },
    )

    it.each([0.5, 0.65, 0.75, 0.85])('a power of %d does not yield the table', (power) => {
      const wrong = cells.filter(([index, bar, load]) => byPower(index, bar, power) !== load)
      expect(wrong.length).toBeGreaterThan(5)
    })

    it.each(printed.map(([index]) => [index]))(
      'load index %i at 2 bar is not decided without table values: both are asked for',
      (index) => {
        expect(loadCheck(withoutTable(index, 2))).toMatchObject({
          outcome: 'asks',
          missing: ['originalTableLoad', 'fittedTableLoad'],
          says: expect.stringContaining('not reckoned by a formula'),
        })
      },
    )
  },
)
