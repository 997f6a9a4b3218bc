import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { whyNoFormula } from '../words/load-check.ts'
import { carriedOn, type LoadCheckOf, loadCheck } from './load-check.ts'

const original = {
  passenger: true,
  loadIndex: 102,
  speed: 'H',
  tableLoad: { value: 790, unit: 'kg' },
} as const
const fitted = {
  passenger: true,
  loadIndex: 103,
  speed: 'V',
  tableLoad: { value: 800, unit: 'kg' },
  sidewallMaximum: { value: 50, unit: 'psi' },
} as const
const sound: LoadCheckOf = {
  vehicle: 'car',
  newOnLabel: false,
  original,
  fitted,
  chosen: { value: 36, unit: 'psi' },
}
const withFitted = (change: Partial<LoadCheckOf['fitted']>): LoadCheckOf => ({
  ...sound,
  fitted: { ...fitted, ...change },
})
const withOriginal = (change: Partial<LoadCheckOf['original']>): LoadCheckOf => ({
  ...sound,
  original: { ...original, ...change },
})

describe('a tire of another size', () => {
  it('passes where every figure is there and none is against it', () => {
    expect(loadCheck(sound)).toMatchObject({ outcome: 'passes', originalCarries: 790, fittedCarries: 800 })
    expect(loadCheck(sound).says).toMatch(/table values entered.*load table govern/)
  })

  it('is decided by the label where the label names it, whatever else is known', () => {
    const named = { ...withFitted({ loadIndex: 60, tableLoad: null }), newOnLabel: true }
    expect(loadCheck(named)).toEqual({
      outcome: 'label-decides',
      says: expect.stringContaining("vehicle maker's label"),
    })
  })

  it.each([
    ['newOnLabel', { ...sound, newOnLabel: null }, 'label names the new size'],
    ['chosen', { ...sound, chosen: null }, 'pressure that is to be set'],
    ['sidewallMaximum', withFitted({ sidewallMaximum: null }), "new tire's sidewall"],
    ['originalLoadIndex', withOriginal({ loadIndex: null }), "original tire's load index"],
    ['fittedLoadIndex', withFitted({ loadIndex: null }), "new tire's load index"],
    ['originalSpeed', withOriginal({ speed: null }), "original tire's speed symbol"],
    ['fittedSpeed', withFitted({ speed: null }), "new tire's speed symbol"],
  ] as const)('is not decided while %s is missing: it is asked for', (missing, of, words) => {
    const check = loadCheck(of)
    expect(check).toMatchObject({ outcome: 'asks', missing: [missing] })
    expect(check.says).toContain(words)
    expect(check.says).not.toContain(whyNoFormula)
  })

  it.each([
    ['originalTableLoad', withOriginal({ tableLoad: null }), "at the label's pressure"],
    ['fittedTableLoad', withFitted({ tableLoad: null }), 'at the chosen pressure'],
  ] as const)(
    'is not decided while %s is missing, and the words say why no formula does',
    (missing, of, words) => {
      const check = loadCheck(of)
      expect(check).toMatchObject({ outcome: 'asks', missing: [missing] })
      expect(check.says).toContain(words)
      expect(check.says).toContain(whyNoFormula)
    },
  )

  it.each([
    ['over-sidewall-maximum', { ...sound, chosen: { value: 51, unit: 'psi' } }, 'above the maximum'],
    ['slower-symbol', withFitted({ speed: 'U' }), 'speed symbol is lower'],
    ['lower-index', withFitted({ loadIndex: 101 }), 'load index is lower'],
    ['carries-less', withFitted({ tableLoad: { value: 789, unit: 'kg' } }), 'carries less'],
  ] as const)('is refused: %s, in words', (reason, of, words) => {
    const check = loadCheck(of as LoadCheckOf)
    expect(check).toMatchObject({ outcome: 'refuses', reasons: [reason] })
    expect(check.says).toContain(words)
    expect(check.says).toMatch(/^Do not fit it so: .*load table govern\.$/)
  })

  it('is refused with every reason at once, and though figures are missing', () => {
    const check = loadCheck({
      ...withFitted({
        speed: 'S',
        loadIndex: 95,
        tableLoad: null,
        sidewallMaximum: { value: 240, unit: 'kPa' },
      }),
      chosen: { value: 2.5, unit: 'bar' },
    })
    expect(check).toMatchObject({
      outcome: 'refuses',
      reasons: ['over-sidewall-maximum', 'slower-symbol', 'lower-index'],
    })
    expect(check.says.split(';')).toHaveLength(3)
  })

  it.each([
    ['the sidewall maximum itself', { ...sound, chosen: { value: 50, unit: 'psi' } }],
    [
      'the same in another unit',
      {
        ...withFitted({ sidewallMaximum: { value: 240, unit: 'kPa' } }),
        chosen: { value: 2.4, unit: 'bar' },
      },
    ],
    ['the same speed symbol', withFitted({ speed: 'H' })],
    ['the same load index', withFitted({ loadIndex: 102 })],
    ['the same load', withFitted({ tableLoad: { value: 790, unit: 'kg' } })],
  ] as const)('passes at %s', (_case, of) => {
    expect(loadCheck(of as LoadCheckOf).outcome).toBe('passes')
  })

  it('counts a passenger tire on a truck as its load divided by 1.10, and on a car whole', () => {
    const tire = { ...original, tableLoad: { value: 1_100, unit: 'lb' } } as const
    expect(carriedOn('truck-or-multipurpose', tire)).toBeCloseTo(453.59237, 9)
    expect(carriedOn('car', tire)).toBeCloseTo(498.951607, 9)
    expect(carriedOn('truck-or-multipurpose', { ...tire, passenger: false })).toBeCloseTo(498.951607, 9)
    expect(carriedOn('car', { ...tire, tableLoad: null })).toBeNull()
  })

  it('that is a passenger one in place of a light-truck one has to carry the tenth more', () => {
    const onTruck = (value: number): LoadCheckOf => ({
      ...withFitted({ tableLoad: { value, unit: 'kg' } }),
      vehicle: 'truck-or-multipurpose',
      original: { ...original, passenger: false },
    })
    expect(loadCheck(onTruck(869)).outcome).toBe('passes')
    expect(loadCheck(onTruck(868))).toMatchObject({ outcome: 'refuses', reasons: ['carries-less'] })
  })

  it('never passes without both table loads', () => {
    const option = <T>(of: fc.Arbitrary<T>) => fc.option(of)
    const tire = fc.record({
      passenger: fc.boolean(),
      loadIndex: option(fc.integer({ min: 60, max: 140 })),
      speed: option(fc.constantFrom('S', 'H', 'V', '(Y)' as const)),
      tableLoad: option(
        fc.record({ value: fc.integer({ min: 300, max: 2_000 }), unit: fc.constantFrom('kg', 'lb') }),
      ),
    })
    const pressure = option(
      fc.record({ value: fc.integer({ min: 200, max: 600 }), unit: fc.constant('kPa') }),
    )
    const outcomes = new Set<string>()
    fc.assert(
      fc.property(
        tire,
        tire,
        pressure,
        pressure,
        fc.constantFrom(true, false, null),
        fc.boolean(),
        (one, other, sidewallMaximum, chosen, newOnLabel, truck) => {
          const check = loadCheck({
            vehicle: truck ? 'truck-or-multipurpose' : 'car',
            newOnLabel,
            original: one as LoadCheckOf['original'],
            fitted: { ...other, sidewallMaximum } as LoadCheckOf['fitted'],
            chosen: chosen as LoadCheckOf['chosen'],
          })
          outcomes.add(check.outcome)
          if (check.outcome !== 'passes') return
          expect(one.tableLoad === null || other.tableLoad === null || chosen === null).toBe(false)
          expect(check.fittedCarries).toBeGreaterThan(check.originalCarries - 1e-6)
        },
      ),
      { seed: 20260112, numRuns: 5_000 },
    )
    expect(outcomes).toEqual(new Set(['asks', 'label-decides', 'passes', 'refuses']))
  })
})

describe('the reason why no formula decides', () => {
  const carries = (most: number, ratedAt: number, power: number) =>
    Math.round(most * (227.5 / ratedAt) ** power)
  it('has figures that turn the answer around, as it says', () => {
    const needed = [carries(850, 250, 0.5), carries(850, 250, 0.8)]
    const carried = [carries(950, 290, 0.5), carries(950, 290, 0.8)]
    expect([needed, carried]).toEqual([
      [811, 788],
      [841, 782],
    ])
    for (const figure of [...needed, ...carried]) expect(whyNoFormula).toContain(`${figure} kg`)
  })
})
