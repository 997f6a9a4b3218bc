/**
 * Source: "Wheel load capacity in kg with tyre pressure in bars", Automotive Engineering: Powertrain, Chassis System and
 * Vehicle Body (2009), chapter 10.1, page 290; read in five of its rows. The handbook's cells are what a person would
 * enter; which tire carries enough at which pressure was then read off the rows by hand. The program never computes a
 * load from a pressure, because other standards' tables follow other powers.
 */
import { type LoadCheckOf, loadCheck } from '@bayledger/reckoning/tire/load-check'
import { loadOfIndex } from '@bayledger/reckoning/tire/load-index'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const pressures = [1.5, 1.6, 1.7, 1.8, 1.9, 2.0, 2.1, 2.2, 2.3, 2.4, 2.5]
const printed: ReadonlyMap<number, readonly number[]> = new Map([
  [69, [215, 225, 240, 250, 260, 270, 285, 295, 305, 315, 325]],
  [75, [255, 270, 285, 300, 310, 325, 335, 350, 360, 375, 387]],
  [80, [300, 315, 330, 345, 360, 375, 390, 405, 420, 435, 450]],
  [84, [330, 350, 365, 385, 400, 420, 435, 450, 470, 485, 500]],
  [87, [360, 380, 400, 420, 440, 455, 475, 490, 510, 525, 545]],
])

const kilogramsAt = (index: number, bar: number): number =>
  printed.get(index)?.[pressures.indexOf(bar)] ?? Number.NaN

type Tire = { readonly index: number; readonly bar: number }

const replaced = (original: Tire, fitted: Tire, tableIsRead: boolean): LoadCheckOf => {
  const tireOf = ({ index, bar }: Tire) => ({
    passenger: true,
    loadIndex: index,
    speed: 'T' as const,
    tableLoad: tableIsRead ? ({ value: kilogramsAt(index, bar), unit: 'kg' } as const) : null,
  })
  return {
    vehicle: 'car',
    newOnLabel: false,
    original: tireOf(original),
    fitted: { ...tireOf(fitted), sidewallMaximum: { value: 3, unit: 'bar' } },
    chosen: { value: fitted.bar, unit: 'bar' },
  }
}

/** The least pressure in the table at which the second tire may take the place of the first. */
const leastBar = (original: Tire, index: number): number | undefined =>
  pressures.find((bar) => loadCheck(replaced(original, { index, bar }, true)).outcome === 'passes')

published(
  {
    document: 'Automotive Engineering: Powertrain, Chassis System and Vehicle Body',
    section: 'chapter 10.1, page 290',
    edition: '2009',
    certainty: 'read',
  },
  () => {
    it.each([...printed].map(([index, loads]) => [index, loads[10] ?? 0] as const))(
      'load index %i at full pressure carries %i kg, as in our table',
      (index, load) => {
        expect(loadOfIndex(index)).toBe(load)
      },
    )

    it.each([
      [84, 2.1, 87, 1.9],
      [84, 2.2, 87, 2.0],
      [80, 2.5, 84, 2.2],
      [80, 2.3, 84, 2.0],
      [75, 2.4, 80, 2.0],
      [69, 2.5, 75, 2.0],
      [75, 2.2, 87, 1.5],
    ])(
      'for a tire of load index %i at %d bar, one of %i has to have %d bar by the table',
      (index, bar, fitted, least) => {
        expect(leastBar({ index, bar }, fitted)).toBe(least)
      },
    )

    it.each([
      [87, 2.0, 84],
      [84, 1.5, 80],
      [75, 1.5, 69],
    ])(
      'for a tire of load index %i at %d bar, one of %i is refused at any pressure',
      (index, bar, fitted) => {
        expect(leastBar({ index, bar }, fitted)).toBeUndefined()
      },
    )

    it.each([...printed.keys()].map((index) => [index]))(
      'load index %i at 2 bar is not decided without table values: both are asked for',
      (index) => {
        const tire = { index, bar: 2 }
        expect(loadCheck(replaced(tire, tire, false))).toMatchObject({
          outcome: 'asks',
          missing: ['originalTableLoad', 'fittedTableLoad'],
        })
      },
    )
  },
)
