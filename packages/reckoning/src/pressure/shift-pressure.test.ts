import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { absoluteKilopascals, gaugeKilopascals, kelvins, meters } from '../units/measured.ts'
import { airAtSeaLevel, airPressureAtAltitude } from './air-pressure.ts'
import { shiftPressure } from './shift-pressure.ts'

const kelvin = fc.double({ min: 220, max: 400, noNaN: true }).map(kelvins)
const gauge = fc.double({ min: -20, max: 900, noNaN: true }).map(gaugeKilopascals)
const air = fc
  .double({ min: -400, max: 4_500, noNaN: true })
  .map((altitude) => airPressureAtAltitude(meters(altitude)))
const fixed = { seed: 20260112, numRuns: 500 }

describe('a shift', () => {
  it('there and back again is where it began', () => {
    fc.assert(
      fc.property(gauge, kelvin, kelvin, air, air, (before, from, to, airBefore, airAfter) => {
        const after = shiftPressure({ gauge: before, from, to, airBefore, airAfter })
        const back = shiftPressure({
          gauge: after,
          from: to,
          to: from,
          airBefore: airAfter,
          airAfter: airBefore,
        })
        expect(back).toBeCloseTo(before, 8)
      }),
      fixed,
    )
  })

  it('by a stop on the way is the same as straight', () => {
    fc.assert(
      fc.property(gauge, kelvin, kelvin, kelvin, air, air, (before, from, by, to, airBefore, airAfter) => {
        const halfway = shiftPressure({ gauge: before, from, to: by, airBefore, airAfter: airBefore })
        const stopped = shiftPressure({ gauge: halfway, from: by, to, airBefore, airAfter })
        const straight = shiftPressure({ gauge: before, from, to, airBefore, airAfter })
        expect(stopped).toBeCloseTo(straight, 8)
      }),
      fixed,
    )
  })

  it('to where nothing differs changes nothing', () => {
    fc.assert(
      fc.property(gauge, kelvin, air, (before, at, outside) => {
        const after = shiftPressure({
          gauge: before,
          from: at,
          to: at,
          airBefore: outside,
          airAfter: outside,
        })
        expect(after).toBeCloseTo(before, 9)
      }),
      fixed,
    )
  })

  it('keeps the quotient of absolute pressure and absolute temperature', () => {
    const after = shiftPressure({
      gauge: gaugeKilopascals(240),
      from: kelvins(300),
      to: kelvins(250),
      airBefore: absoluteKilopascals(100),
      airAfter: absoluteKilopascals(90),
    })
    expect(after).toBeCloseTo((340 / 300) * 250 - 90, 10)
  })

  it('of a flat tire is no pressure at its own temperature, and less than none in the cold', () => {
    const flat = {
      gauge: gaugeKilopascals(0),
      from: kelvins(293),
      airBefore: airAtSeaLevel,
      airAfter: airAtSeaLevel,
    }
    expect(shiftPressure({ ...flat, to: kelvins(293) })).toBeCloseTo(0, 10)
    expect(shiftPressure({ ...flat, to: kelvins(263) })).toBeLessThan(-10)
  })
})

describe('the open air', () => {
  it('is 101.325 kPa at the sea, denser below it and thinner above', () => {
    expect(airPressureAtAltitude(meters(0))).toBe(101.325)
    expect(airPressureAtAltitude(meters(-400))).toBeCloseTo(106.2234, 3)
    expect(airPressureAtAltitude(meters(4_300))).toBeCloseTo(59.248, 1)
  })
})
