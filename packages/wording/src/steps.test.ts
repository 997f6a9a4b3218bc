import type { Work } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import type { TireDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { readingOrder, roadPositions } from '@bayledger/reckoning/wheels'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { utilitySheet } from '../../reckoning/test-support/utility-sheet.ts'
import { steps } from './en/steps.ts'
import { figureSource, stepDoes, stepHow } from './steps.ts'

const settings = { seed: 20260112, numRuns: 300 }
const wheel = fc.constantFrom(...readingOrder)
const valve = fc.constantFrom('snap-in' as const, 'clamp-in' as const)
const anyWorks: fc.Arbitrary<Work[]> = fc.array(
  fc.oneof(
    fc.constantFrom<Work>(
      { kind: 'set-pressures' },
      { kind: 'relearn' },
      { kind: 'reset' },
      { kind: 'swap-wheels' },
    ),
    fc.record({
      kind: fc.constant('fit-sensor' as const),
      wheel,
      valve,
      identity: fc.constantFrom('copy' as const, 'new' as const),
    }),
    fc.record({
      kind: fc.constant('service-stem' as const),
      wheel,
      valve: fc.oneof(valve, fc.constant('plain' as const)),
    }),
    fc.record({
      kind: fc.constantFrom('find-leak' as const, 'repair-puncture' as const, 'fit-tire' as const),
      wheel,
    }),
    fc.record({
      kind: fc.constant('rotate' as const),
      pattern: fc.constantFrom(...RotationPattern.options),
    }),
    fc.record({
      kind: fc.constantFrom('torque-again' as const, 'repair-fastener' as const),
      wheel: fc.constantFrom(...roadPositions),
    }),
  ),
  { maxLength: 8 },
)
const unread = { kind: 'maker-manual', reference: 'p. 1', enteredBy: 'a', verifiedBy: null } as const
const anySheet: fc.Arbitrary<SpecificationSheet> = fc
  .record({
    system: fc.constantFrom('direct' as const, 'indirect' as const, 'none' as const),
    spare: fc.constantFrom('none' as const, 'temporary' as const, 'full-size' as const),
    staggered: fc.boolean(),
    hasSensor: fc.boolean(),
    method: fc.constantFrom(null, 'automatic', 'stationary', 'connector', 'reset'),
    longest: fc.boolean(),
    isTruck: fc.boolean(),
  })
  .map(({ hasSensor, method, longest, isTruck, ...rest }) => ({
    ...utilitySheet,
    ...rest,
    liftNotes: longest ? 'n'.repeat(500) : '',
    tire: {
      ...utilitySheet.tire,
      front: { ...utilitySheet.tire.front, loadClass: isTruck ? 'LT-E' : 'SL' },
      spare: rest.spare === 'full-size' ? utilitySheet.tire.front : null,
    },
    sources: { placard: unread, studTorque: unread, frequency: unread },
    sensor: hasSensor ? utilitySheet.sensor : null,
    relearn:
      method && utilitySheet.relearn
        ? { ...utilitySheet.relearn, method, ...(longest ? longestTexts : {}) }
        : null,
  }))
const anyDangers: fc.Arbitrary<TireDangers> = fc.record({
  sealant: fc.subarray([...readingOrder]),
  runLow: fc.subarray([...readingOrder]),
})
const longestTexts = {
  entry: 'e'.repeat(200),
  confirmation: 'c'.repeat(200),
  exit: 'x'.repeat(200),
  knownTrap: 't'.repeat(200),
}

describe('a step of any plan', () => {
  it('has a title of at most 80 characters and, in at most 1,200, how it is done', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(anySheet, anyWorks, anyDangers, fc.boolean(), (sheet, works, dangers, onSpare) => {
        for (const step of planJob(
          sheet,
          [
            ...works.map((work) => ({ work, bundleKey: 'one' })),
            ...(onSpare ? [{ work: { kind: 'fit-spare', wheel: 'LF' } as const, bundleKey: null }] : []),
          ],
          1,
          dangers,
        ).steps) {
          seen.add(step.code)
          const [does, how] = [stepDoes(steps, step), stepHow(steps, step)]
          expect(does.length).toBeGreaterThan(5)
          expect(does.length, does).toBeLessThanOrEqual(80)
          expect(how.length).toBeGreaterThan(20)
          expect(how.length, how).toBeLessThanOrEqual(1_200)
          for (const words of [does, how])
            expect(words).not.toMatch(/null|undefined|NaN|\[object|`|\$\{| {2}/)
        }
      }),
      settings,
    )
    expect([...seen].toSorted()).toEqual(Object.keys(steps.does).toSorted())
  })

  it('of an earlier version keeps the words that were written for it', () => {
    const earlier: Step = {
      stepKey: 'LF.wheel.polish',
      code: 'other',
      wheel: 'LF',
      closedBy: 'step.closed',
      round: null,
      opensTire: false,
      height: 'floor',
      figure: null,
      needs: [],
      waitsFor: [],
      unverified: null,
      cautions: [],
      bundleKey: null,
      values: null,
      asWritten: { does: 'Polish the wheel', how: 'With a cloth.' },
    }
    expect(stepDoes(steps, earlier)).toBe('Polish the wheel')
    expect(stepHow(steps, earlier)).toBe('With a cloth.')
  })
})

describe('the source of a figure', () => {
  it('is what a person typed, or the name of a source that the plan knows', () => {
    expect(figureSource(steps, { from: 'sheet', reference: 'page 312' })).toBe('page 312')
    expect(figureSource(steps, { from: 'stem-nut' })).toBe("stem nut, sensor maker's sheet")
    for (const words of Object.values(steps.sources)) expect(words.length).toBeGreaterThan(5)
  })
})
