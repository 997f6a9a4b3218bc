import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Pressure } from '../quantity.ts'
import { metersFromFeet } from '../units/length-units.ts'
import { meters } from '../units/measured.ts'
import { inKilopascals, type PressureUnit } from '../units/pressure-units.ts'
import { inKelvin } from '../units/temperature-units.ts'
import { type SetTargetOf, setTarget, type TireTemperature, usualCaps } from './set-target.ts'

const psi = (value: number): Pressure => ({ value, unit: 'psi' })
const fahrenheit = (value: number) => inKelvin({ value, unit: 'F' })
const tireAt = (value: number, quality: TireTemperature['quality'] = 'measured'): TireTemperature => ({
  kelvin: fahrenheit(value),
  quality,
})

const bay: SetTargetOf = {
  placard: psi(35),
  sidewallMaximum: psi(51),
  outdoor: fahrenheit(20),
  tire: tireAt(70),
  altitude: meters(0),
}
const van: SetTargetOf = {
  placard: psi(72),
  sidewallMaximum: psi(80),
  outdoor: fahrenheit(24),
  tire: tireAt(104, 'estimated'),
  altitude: metersFromFeet(820),
}

describe('the pressure to set', () => {
  // The trade's own worked numbers, computed from the gas law by hand.
  it.each([
    ['35 psi, bay 70 °F, outdoors 20 °F', bay, 40.2],
    [
      '35 psi, driven at 104 °F, outdoors 50 °F',
      { ...bay, tire: tireAt(104, 'estimated'), outdoor: fahrenheit(50) },
      40.3,
    ],
    [
      '33 psi at 820 ft, bay 64 °F, outdoors 19 °F',
      {
        ...bay,
        placard: psi(33),
        altitude: metersFromFeet(820),
        tire: tireAt(64),
        outdoor: fahrenheit(19),
      },
      37.4,
    ],
    [
      '33 psi at 820 ft, tire 48 °F, outdoors 19 °F',
      {
        ...bay,
        placard: psi(33),
        altitude: metersFromFeet(820),
        tire: tireAt(48),
        outdoor: fahrenheit(19),
      },
      35.9,
    ],
    [
      '72 psi at 820 ft, tire 60 °F, outdoors 27 °F',
      { ...van, tire: tireAt(60), outdoor: fahrenheit(27) },
      77.8,
    ],
  ])('%s', (_, of, expected) => {
    expect(setTarget(of)).toMatchObject({ target: psi(expected), cappedBy: null })
  })

  it('is in the unit in which the label is printed, to what a gauge shows in it', () => {
    const inKpa = { ...bay, placard: { value: 240, unit: 'kPa' }, sidewallMaximum: null } as const
    expect(setTarget(inKpa)).toMatchObject({ target: { value: 276, unit: 'kPa' } })
    expect(setTarget({ ...inKpa, placard: { value: 2.4, unit: 'bar' } })).toMatchObject({
      target: { value: 2.76, unit: 'bar' },
    })
  })

  it('carries the quality of the temperature that it was computed from', () => {
    expect(setTarget(bay)).toMatchObject({ target: psi(40.2), quality: 'measured' })
    expect(setTarget({ ...bay, tire: tireAt(60, 'estimated') })).toMatchObject({
      target: psi(39.1),
      quality: 'estimated',
    })
    expect(setTarget({ ...bay, placard: { value: 240, unit: 'kPa' } })).toMatchObject({
      target: { value: 276, unit: 'kPa' },
    })
  })

  it('is the label’s figure where the tire is no warmer than outdoors', () => {
    const summer = { ...bay, tire: tireAt(60), outdoor: fahrenheit(95) }
    expect(setTarget(summer)).toMatchObject({ target: psi(35), cappedBy: null, quality: 'measured' })
    expect(setTarget({ ...bay, tire: { kelvin: bay.outdoor, quality: 'assumed' } })).toMatchObject({
      target: psi(35),
      cappedBy: null,
    })
  })

  it('is the label’s figure where the temperature of the tire is unknown', () => {
    expect(setTarget({ ...bay, tire: null })).toMatchObject({
      target: psi(35),
      quality: 'assumed',
      cappedBy: null,
    })
  })
})

describe('a cap on the pressure to set', () => {
  it('is the sidewall’s maximum, and the tire is finished cold', () => {
    expect(setTarget(van)).toMatchObject({ target: psi(80), cappedBy: 'sidewall-maximum' })
  })

  it('is 6 psi over the label of a car tire and 15 % over that of a harder one', () => {
    const hot = { ...bay, tire: tireAt(140) }
    expect(setTarget(hot)).toMatchObject({ target: psi(41), cappedBy: 'allowance' })
    expect(setTarget({ ...hot, placard: psi(40), sidewallMaximum: null })).toMatchObject({ target: psi(46) })
    expect(setTarget({ ...hot, placard: psi(60), sidewallMaximum: null })).toMatchObject({ target: psi(69) })
  })

  it('is 3 psi over the label where the tire’s temperature is assumed', () => {
    expect(setTarget({ ...bay, tire: tireAt(70, 'assumed') })).toMatchObject({
      target: psi(38),
      quality: 'assumed',
      cappedBy: 'allowance',
    })
    expect(setTarget({ ...bay, tire: tireAt(40, 'assumed') })).toMatchObject({
      target: psi(37.1),
      cappedBy: null,
    })
  })

  it('is a setting of the shop', () => {
    const hot = { ...bay, tire: tireAt(140) }
    expect(setTarget(hot, { ...usualCaps, overPsi: 4, overShare: 0.1 })).toMatchObject({ target: psi(39) })
    expect(setTarget(hot, { ...usualCaps, overShare: 0.2 })).toMatchObject({ target: psi(42) })
    expect(
      setTarget({ ...bay, tire: tireAt(70, 'assumed') }, { ...usualCaps, overAssumedPsi: 2 }),
    ).toMatchObject({ target: psi(37) })
  })

  it('is no reason to go over the sidewall by rounding', () => {
    expect(setTarget({ ...bay, sidewallMaximum: psi(38.27) })).toMatchObject({ target: psi(38.2) })
    expect(setTarget({ ...bay, sidewallMaximum: psi(40.19) })).toMatchObject({ target: psi(40.1) })
  })

  it('says nothing of a sidewall that is not known', () => {
    expect(setTarget({ ...bay, sidewallMaximum: null })).toMatchObject({ target: psi(40.2), cappedBy: null })
  })
})

describe('a label over the sidewall’s maximum', () => {
  it('is refused, and nothing is set', () => {
    expect(setTarget({ ...bay, placard: psi(60), sidewallMaximum: psi(51) })).toEqual({
      ok: false,
      fault: 'label-over-sidewall',
      label: psi(60),
      sidewallMaximum: psi(51),
    })
  })

  it('is not refused where both are the same', () => {
    expect(setTarget({ ...bay, placard: psi(51) })).toMatchObject({ ok: true, target: psi(51) })
    expect(setTarget({ ...bay, placard: psi(51.1) })).toMatchObject({ ok: false })
  })
})

it('a target is never under the label nor over the sidewall’s maximum, or it is refused with the reason', () => {
  const unit = fc.constantFrom<PressureUnit[]>('psi', 'kPa', 'bar')
  const sizes = { psi: 1, kPa: 6.9, bar: 0.069 }
  const pressure = (least: number, most: number) =>
    fc
      .tuple(fc.double({ min: least, max: most, noNaN: true }), unit)
      .map(([value, of]): Pressure => ({ value: value * sizes[of], unit: of }))
  const quality = fc.constantFrom<TireTemperature['quality'][]>('measured', 'estimated', 'assumed')
  const celsius = (value: number) => inKelvin({ value, unit: 'C' })
  fc.assert(
    fc.property(
      fc.record({
        placard: pressure(20, 90),
        sidewallMaximum: fc.option(pressure(30, 100)),
        outdoor: fc.integer({ min: -45, max: 50 }).map(celsius),
        tire: fc.option(fc.record({ kelvin: fc.integer({ min: -45, max: 110 }).map(celsius), quality })),
        altitude: fc.integer({ min: -100, max: 4_300 }).map(meters),
      }),
      (of) => {
        const set = setTarget(of)
        const maximum = of.sidewallMaximum
        // A thousandth of a psi, for what conversion does to the last digit.
        const near = 0.007
        if (!set.ok) {
          expect(maximum).not.toBeNull()
          expect(inKilopascals(of.placard)).toBeGreaterThan(inKilopascals(maximum ?? of.placard))
          return
        }
        expect(set.target.value).toBeGreaterThanOrEqual(of.placard.value)
        if (maximum) {
          const most = Math.max(inKilopascals(maximum), inKilopascals(of.placard))
          expect(inKilopascals(set.target)).toBeLessThanOrEqual(most + near)
        }
      },
    ),
    { seed: 20260112, numRuns: 2_000 },
  )
})
