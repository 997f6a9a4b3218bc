import * as fc from 'fast-check'
import type { Work } from '../src/estimate.ts'
import type { AuthorizedWork } from '../src/job-plan/authorized-work.ts'
import { planJob } from '../src/job-plan/plan-job.ts'
import type { TireDangers } from '../src/job-plan/tire-dangers.ts'
import { RotationPattern } from '../src/rotation/rotation-pattern.ts'
import type { SafetyFigure, SpecificationSheet } from '../src/sheet.ts'
import type { PlannedStep } from '../src/step.ts'
import { readingOrder, roadPositions } from '../src/wheels.ts'
import { utilitySheet } from './utility-sheet.ts'

export const settings = { seed: 20260112, numRuns: 400 }

export const wheel = fc.constantFrom(...readingOrder)
export const anyWork: fc.Arbitrary<Work> = fc.oneof(
  fc.constantFrom<Work>(
    { kind: 'look' },
    { kind: 'set-pressures' },
    { kind: 'relearn' },
    { kind: 'reset' },
    { kind: 'swap-wheels' },
  ),
  fc.record({
    kind: fc.constant('fit-sensor' as const),
    wheel,
    valve: fc.constantFrom('snap-in' as const, 'clamp-in' as const),
    identity: fc.constantFrom('copy' as const, 'new' as const),
  }),
  fc.record({
    kind: fc.constant('service-stem' as const),
    wheel,
    valve: fc.constantFrom('snap-in' as const, 'clamp-in' as const, 'plain' as const),
  }),
  fc.record({
    kind: fc.constantFrom('find-leak' as const, 'repair-puncture' as const, 'fit-tire' as const),
    wheel,
  }),
  fc.record({ kind: fc.constant('rotate' as const), pattern: fc.constantFrom(...RotationPattern.options) }),
  fc.record({ kind: fc.constant('torque-again' as const), wheel: fc.constantFrom(...roadPositions) }),
)
export const anyAuthorized = fc.array(
  fc.record({ work: anyWork, bundleKey: fc.constantFrom('one', 'two', 'three') }),
  { maxLength: 8 },
)

/** The same, the vehicle leaving on its spare or not. */
export const anyAuthorizedOrSpare = fc
  .tuple(anyAuthorized, fc.option(fc.constantFrom(...roadPositions)))
  .map(([authorized, wheel]): AuthorizedWork[] => [
    ...authorized,
    ...(wheel === null ? [] : [{ work: { kind: 'fit-spare' as const, wheel }, bundleKey: null }]),
  ])

export const source = fc
  .constantFrom(null, 'b')
  .map((verifiedBy) => ({ kind: 'maker-manual', reference: 'p. 1', enteredBy: 'a', verifiedBy }) as const)
export const anySheet: fc.Arbitrary<SpecificationSheet> = fc
  .record({
    system: fc.constantFrom('direct' as const, 'indirect' as const, 'none' as const, 'unknown' as const),
    spare: fc.constantFrom('none' as const, 'temporary' as const, 'full-size' as const),
    spareMonitored: fc.boolean(),
    staggered: fc.boolean(),
    hasSensor: fc.boolean(),
    hasSpareLabel: fc.boolean(),
    loadClass: fc.constantFrom('SL' as const, 'XL' as const, 'LT-E' as const),
    method: fc.constantFrom(null, 'automatic', 'stationary', 'connector', 'reset'),
    sources: fc.record({ placard: source, studTorque: source, frequency: fc.option(source) }),
  })
  .map(({ hasSensor, hasSpareLabel, method, loadClass, ...rest }) => ({
    ...utilitySheet,
    ...rest,
    sensor: hasSensor ? utilitySheet.sensor : null,
    placard: { ...utilitySheet.placard, spare: hasSpareLabel ? utilitySheet.placard.spare : null },
    tire: {
      ...utilitySheet.tire,
      rear: { ...utilitySheet.tire.rear, loadClass },
      spare: rest.spare === 'full-size' ? utilitySheet.tire.front : null,
    },
    relearn: method && utilitySheet.relearn ? { ...utilitySheet.relearn, method } : null,
  }))

export const anyDangers: fc.Arbitrary<TireDangers> = fc.record({
  sealant: fc.subarray([...readingOrder]),
  runLow: fc.subarray([...readingOrder]),
})

/** Steps that fill a tire, or look for a leak with air. */
export const airBringing: ReadonlySet<PlannedStep['code']> = new Set([
  'find-leak',
  'find-leak-after-look',
  'seat-tire',
  'seat-in-restraint',
  'inflate-tire',
  'inflate-in-restraint',
])

/** Every step that must be closed before a step can be. */
export const everythingBefore = (steps: readonly PlannedStep[]): ReadonlyMap<string, ReadonlySet<string>> => {
  const before = new Map<string, Set<string>>()
  for (const { stepKey, waitsFor } of steps)
    before.set(stepKey, new Set(waitsFor.flatMap((key) => [key, ...(before.get(key) ?? [])])))
  return before
}

/** Which safety figure a step shows to be worked by, seen from the step alone. */
export const shownFigure = ({ figure, closedBy }: PlannedStep): SafetyFigure | null => {
  if (figure?.kind === 'placard') return 'placard'
  if (figure?.kind === 'frequency') return 'frequency'
  return closedBy === 'studs.torqued' || closedBy === 'torque.checked' ? 'studTorque' : null
}

export const plans = (
  check: (
    steps: readonly PlannedStep[],
    sheet: SpecificationSheet,
    works: readonly Work[],
    dangers: TireDangers,
  ) => void,
): void =>
  fc.assert(
    fc.property(anySheet, anyAuthorized, anyDangers, (sheet, authorized, dangers) => {
      check(
        planJob(sheet, authorized, 1, dangers).steps,
        sheet,
        authorized.map(({ work }) => work),
        dangers,
      )
    }),
    settings,
  )
