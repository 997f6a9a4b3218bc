import type { Work } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { readingOrder, roadPositions } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { tarn } from '../../../test-support/tarn.ts'
import { PlanVersion1, planToVersion2 } from './plan-version-1.ts'

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

describe('a plan of version 1', () => {
  it.each(jobs.map((works) => [works[0]?.kind, works] as const))(
    'for %s says by its keys what the plan of today says in fields',
    (_, works) => {
      const plan = planJob(
        unverified,
        works.map((work) => ({ work, bundleKey: 'one' })),
        1,
      )
      const steps = plan.steps.map(({ code: _c, round: _r, opensTire: _o, height: _h, ...rest }) => rest)
      const written = z.parse(PlanVersion1, { plan: { ...plan, steps }, decisionId: null })
      expect(planToVersion2(written)).toEqual({ plan, decisionId: null })
    },
  )

  it('keeps a step whose key nobody knows any more, as work of its own', () => {
    const step = {
      stepKey: 'LF.wheel.polish',
      wheel: 'LF' as const,
      does: 'Polish the wheel',
      how: '',
      closedBy: 'step.closed' as const,
      figure: null,
      needs: [],
      waitsFor: [],
      unverified: null,
      caution: null,
      bundleKey: null,
    }
    const { plan } = planToVersion2({ plan: { planVersion: 1, steps: [step] }, decisionId: null })
    expect(plan.steps).toEqual([{ ...step, code: 'other', round: null, opensTire: false, height: 'floor' }])
  })
})
