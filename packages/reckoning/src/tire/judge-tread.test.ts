import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Length } from '../units/length-units.ts'
import { type Grooves, judgeTread } from './judge-tread.ts'
import { treadRules } from './tread-rules.ts'

const grooves = (unit: Length['unit'], ...values: [number, number, ...number[]]): Grooves => {
  const [one, two, ...others] = values
  const length = (value: number): Length => ({ value, unit })
  return [length(one), length(two), ...others.map(length)]
}
const in32nds = (...values: [number, number, ...number[]]) => grooves('1/32 in', ...values)
const worn = in32nds(1, 1, 6)
const good = in32nds(6, 6, 6)

describe('tread readings', () => {
  it('say which grooves are under the depth, and which are down to the wear bar', () => {
    expect(judgeTread([in32nds(1, 2, 3), good, in32nds(6, 6, 2)], treadRules.light)).toMatchObject({
      verdict: 'warning',
      under: [{ place: 1, groove: 1 }],
      atWearBar: [
        { place: 1, groove: 1 },
        { place: 1, groove: 2 },
        { place: 3, groove: 3 },
      ],
    })
    expect(judgeTread([good, good, good], treadRules.light)).toMatchObject({
      verdict: 'pass',
      under: [],
      atWearBar: [],
    })
  })

  it('down to the wear bar and not under it are a warning, and no reason to reject', () => {
    const atBar = in32nds(2, 2, 2)
    expect(judgeTread([atBar, atBar, atBar], treadRules.light)).toMatchObject({
      verdict: 'warning',
      under: [],
    })
    expect(judgeTread([atBar, atBar, atBar], treadRules.pennsylvania).verdict).toBe('warning')
    expect(judgeTread([atBar, atBar, atBar], treadRules.heavyFront).verdict).toBe('reject')
  })

  it('under the depth of a front tire, though far from the wear bar, are a warning too', () => {
    expect(judgeTread([in32nds(3, 6, 3), good, good], treadRules.heavyFront)).toMatchObject({
      verdict: 'warning',
      atWearBar: [],
    })
  })

  it('reject where two adjacent grooves are under: at every place, or at any, as the rule has it', () => {
    expect(judgeTread([worn, worn, worn], treadRules.light).verdict).toBe('reject')
    expect(judgeTread([worn, worn, good], treadRules.light).verdict).toBe('warning')
    expect(judgeTread([good, good, worn], treadRules.pennsylvania).verdict).toBe('reject')
    const last = in32nds(6, 1, 1)
    expect(judgeTread([worn, last, worn], treadRules.light).verdict).toBe('reject')
    const apart = in32nds(1, 6, 1)
    expect(judgeTread([apart, apart, apart], treadRules.light).verdict).toBe('warning')
    expect(judgeTread([apart, apart, apart], treadRules.pennsylvania).verdict).toBe('warning')
  })

  it('are compared in mm as read in mm', () => {
    const under = grooves('mm', 1.58, 1.58)
    const at = grooves('mm', 1.5875, 1.5875)
    const over = grooves('mm', 1.6, 1.6)
    expect(judgeTread([under, under, under], treadRules.light).verdict).toBe('reject')
    expect(judgeTread([at, at, at], treadRules.light).verdict).toBe('warning')
    expect(judgeTread([over, over, over], treadRules.light).verdict).toBe('pass')
  })

  it('are said in words that name the rule and whom it governs', () => {
    const saying = (rule: Parameters<typeof judgeTread>[1], ...places: Parameters<typeof judgeTread>[0]) =>
      judgeTread(places, rule).says
    expect(saying(treadRules.light, worn, worn, worn)).toBe(
      'Two adjacent grooves are under the depth asked for. 49 CFR 570.9(a): A model for state inspection: the rule of the state where the vehicle is inspected governs.',
    )
    expect(saying(treadRules.utah, good, worn, good)).toMatch(
      /^A groove is worn down, .*R714-160-8.*that state only/,
    )
    expect(saying(treadRules.utah, good, good, good)).toMatch(/^No groove is worn down\./)
  })

  it('never get a milder verdict from less tread', () => {
    const order = { pass: 0, warning: 1, reject: 2 }
    const depths = fc.tuple(fc.nat(8), fc.nat(8), fc.nat(8))
    const rule = fc.constantFrom(...Object.values(treadRules))
    fc.assert(
      fc.property(
        depths,
        depths,
        depths,
        rule,
        fc.nat(2),
        fc.nat(2),
        (one, two, three, by, place, groove) => {
          const places = [one, two, three]
          const shallower = places.map((depth, index) =>
            depth.map((value, at) => (index === place && at === groove ? Math.max(0, value - 1) : value)),
          )
          const judge = ([a, b, c]: number[][]) => {
            const at = ([first = 0, second = 0, third = 0]: number[] = []) => in32nds(first, second, third)
            return order[judgeTread([at(a), at(b), at(c)], by).verdict]
          }
          expect(judge(shallower)).toBeGreaterThanOrEqual(judge(places))
        },
      ),
      { seed: 20260112, numRuns: 2_000 },
    )
  })
})
