/**
 * Nominal sizes worked out by hand from the inch of 25.4 mm, the mile of 1,609.344 m and the circle, by the formulas that
 * a tire dealer prints. The trade keeps the change of diameter within 3 %: common practice, no source.
 */
import {
  circumference,
  diameterChange,
  overallDiameter,
  revolutionsPer,
  sidewallHeight,
} from '@bayledger/reckoning/tire/geometry'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { lengthIn } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const sizeOf = (text: string) => {
  const read = readTireSize(text)
  if (!read.ok || read.value.kind === 'heightless') throw new Error(`${text} says no diameter`)
  return read.value
}

const rows = [
  ['205/55R16', 112.75, 631.9, 24.88, 1985.2, 810.7, 503.7],
  ['225/45R17', 101.25, 634.3, 24.97, 1992.7, 807.6, 501.8],
  ['195/65R15', 126.75, 634.5, 24.98, 1993.3, 807.4, 501.7],
  ['P215/65R15', 139.75, 660.5, 26.0, 2075.0, 775.6, 481.9],
  ['LT235/85R16', 199.75, 805.9, 31.73, 2531.8, 635.6, 395.0],
  ['275/40ZR19', 110.0, 702.6, 27.66, 2207.3, 729.1, 453.0],
  ['245/55R18', 134.75, 726.7, 28.61, 2283.0, 704.9, 438.0],
  ['33x12.50R15LT', null, 838.2, 33.0, 2633.3, 611.2, 379.8],
] as const

published(
  { document: 'Tire geometry', section: 'nominal sizes', certainty: 'computed from definition' },
  () => {
    it.each(rows.flatMap(([size, sidewall]) => (sidewall === null ? [] : [[size, sidewall] as const])))(
      '%s has a sidewall of %d mm',
      (size, sidewall) => {
        expect(sidewallHeight(sizeOf(size))).toBeCloseTo(sidewall, 9)
      },
    )

    it.each(rows.map(([size, , diameter, inches]) => [size, diameter, inches] as const))(
      '%s has a diameter of %d mm (%d in)',
      (size, diameter, inches) => {
        const overall = overallDiameter(sizeOf(size))
        expect(overall).toBeCloseTo(diameter, 1)
        expect(lengthIn('in', { value: overall, unit: 'mm' })).toBeCloseTo(inches, 2)
      },
    )

    it.each(rows.map(([size, , , , around]) => [size, around] as const))(
      '%s is %d mm around',
      (size, around) => {
        expect(Number(circumference(sizeOf(size)).toFixed(1))).toBe(around)
      },
    )

    it.each(rows.map(([size, , , , , perMile]) => [size, perMile] as const))(
      '%s makes %d revolutions a mile',
      (size, perMile) => {
        expect(Number(revolutionsPer('mi', sizeOf(size)).toFixed(1))).toBe(perMile)
      },
    )

    it.each(rows.map(([size, , , , , , perKilometer]) => [size, perKilometer] as const))(
      '%s makes %d revolutions a kilometer',
      (size, perKilometer) => {
        expect(Number(revolutionsPer('km', sizeOf(size)).toFixed(1))).toBe(perKilometer)
      },
    )

    it('225/45R17 is 0.38 %% larger than 205/55R16, within the 3 %% of the trade', () => {
      const change = diameterChange(sizeOf('205/55R16'), sizeOf('225/45R17'))
      expect(change.percent).toBeCloseTo(0.38, 2)
      expect(change.withinTrade).toBe(true)
    })
  },
)
