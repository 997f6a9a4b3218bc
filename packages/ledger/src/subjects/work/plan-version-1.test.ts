import type { Work } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import type { JobPlan, PlannedStep } from '@bayledger/reckoning/step'
import { readingOrder, roadPositions } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { tarn } from '../../../test-support/tarn.ts'
import { PlanVersion1, planToVersion2 } from './plan-version-1.ts'
import { PlanVersion2 } from './plan-version-2.ts'

const onEvery = (...works: readonly ((wheel: (typeof readingOrder)[number]) => Work)[]): Work[] =>
  works.flatMap((work) => readingOrder.map(work))

const jobs: readonly (readonly Work[])[] = [
  [
    ...onEvery(
      (wheel) => ({ kind: 'fit-sensor', wheel, valve: 'clamp-in', identity: 'new' }),
      (wheel) => ({ kind: 'find-leak', wheel }),
      (wheel) => ({ kind: 'fit-tire', wheel }),
    ),
    { kind: 'relearn' },
  ],
  onEvery((wheel) => ({ kind: 'service-stem', wheel, valve: 'snap-in' })),
  [{ kind: 'swap-wheels' }],
  [{ kind: 'rotate', pattern: 'five-forward-cross' }],
  roadPositions.map((wheel) => ({ kind: 'torque-again', wheel })),
]
const unverified = {
  ...tarn,
  spare: 'full-size' as const,
  tire: { ...tarn.tire, spare: tarn.tire.front },
  sources: { placard: source(), studTorque: source(), frequency: source() },
}
function source() {
  return { kind: 'maker-manual' as const, reference: 'p. 1', enteredBy: 'a', verifiedBy: null }
}

/** A plan as version 1 would have written it: no fields, and words in their place. */
const asVersion1 = (plan: JobPlan) => ({
  plan: {
    planVersion: plan.planVersion,
    steps: plan.steps.map((step) => {
      const { stepKey, wheel, closedBy, needs, waitsFor, unverified, bundleKey, comesFrom } = step
      return {
        ...{ stepKey, wheel, closedBy, needs, waitsFor, unverified, bundleKey, figure: null },
        ...(comesFrom ? { comesFrom } : {}),
        does: `Title of ${step.code}`,
        how: `How ${step.code} is done.`,
        caution: step.cautions[0]?.number ?? null,
      }
    }),
  },
  decisionId: null,
})

const wasKnown = (step: PlannedStep): boolean =>
  z.safeParse(PlanVersion2, { plan: { planVersion: 1, steps: [step] }, decisionId: null }).success

describe('a plan of version 1', () => {
  it.each(jobs.map((works) => [works[0]?.kind, works] as const))(
    'for %s says by its keys what a plan of version 2 says in fields, and keeps its words',
    (_, works) => {
      const today = planJob(
        unverified,
        works.map((work) => ({ work, bundleKey: 'one' })),
        1,
        noDangers,
      )
      const plan = { ...today, steps: today.steps.filter(wasKnown) }
      expect(plan.steps.length).toBeGreaterThan(4)
      const read = planToVersion2(z.parse(PlanVersion1, asVersion1(plan)))
      expect(read.plan.steps).toEqual(
        plan.steps.map((step) => {
          const { procedure: _procedure, ...common } = { procedure: null, ...step }
          const asWritten = { does: `Title of ${step.code}`, how: `How ${step.code} is done.` }
          return { ...common, figure: null, values: null, asWritten }
        }),
      )
    },
  )

  const step = {
    stepKey: 'LF.wheel.polish',
    wheel: 'LF' as const,
    does: 'Polish the wheel',
    how: 'With a cloth.',
    closedBy: 'step.closed' as const,
    figure: null,
    needs: [],
    waitsFor: [],
    unverified: null,
    caution: null,
    bundleKey: null,
  }
  const readStep = (change: object) => {
    const plan = { planVersion: 1, steps: [{ ...step, ...change }] }
    return planToVersion2(z.parse(PlanVersion1, { plan, decisionId: null })).plan.steps[0]
  }

  it('keeps a step whose key nobody knows any more, as work of its own', () => {
    expect(readStep({})).toMatchObject({
      code: 'other',
      round: null,
      opensTire: false,
      height: 'floor',
      cautions: [],
      asWritten: { does: 'Polish the wheel', how: 'With a cloth.' },
    })
  })

  it.each([
    [
      { kind: 'count', count: 20, unit: 'min driven', source: 'Utility 2016' },
      { kind: 'minutes', minutes: 20, of: 'driving', source: { from: 'sheet', reference: 'Utility 2016' } },
    ],
    [
      { kind: 'count', count: 5, unit: 'min limit', source: 'Utility 2016' },
      { kind: 'minutes', minutes: 5, of: 'time-limit', source: { from: 'sheet', reference: 'Utility 2016' } },
    ],
    [
      { kind: 'count', count: 20, unit: 'min', source: '49 CFR 571.138 S4.2' },
      { kind: 'minutes', minutes: 20, of: 'proof-drive', source: { from: 'federal-rule' } },
    ],
    [
      { kind: 'torque', torque: { value: 62, unit: 'lbf·in' }, source: "stem nut, sensor maker's sheet" },
      { kind: 'torque', torque: { value: 62, unit: 'lbf·in' }, source: { from: 'stem-nut' } },
    ],
    [
      { kind: 'placard', psi: 35, source: 'door, p. 1' },
      { kind: 'placard', psi: 35, source: { from: 'sheet', reference: 'door, p. 1' } },
    ],
  ])('reads its figure %j', (figure, read) => {
    expect(readStep({ figure })?.figure).toEqual(read)
  })

  it('carries a caution in the version that was in force, and none that was never issued', () => {
    expect(readStep({ caution: 'CW-03' })?.cautions).toEqual([{ number: 'CW-03', version: 2 }])
    expect(readStep({ caution: 'CW-04' })?.cautions).toEqual([{ number: 'CW-04', version: 1 }])
    expect(readStep({ caution: 'CW-99' })?.cautions).toEqual([])
  })
})
