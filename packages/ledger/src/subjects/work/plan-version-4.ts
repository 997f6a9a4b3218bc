import { JobPlan, type PlannedStep } from '@bayledger/reckoning/step'
import * as z from 'zod/mini'
import { Id } from '../../text.ts'

const isWhole = (step: PlannedStep): boolean =>
  !('fastener' in step.values && step.values.fastener === 'missing') &&
  !('torque' in step.values && step.values.torque === 'missing') &&
  !('doubts' in step.values && step.values.doubts.includes('tires-not-on-sheet'))

/** Version 4 of `plan.issued`: every figure that a step needs had to be on the sheet. */
export const PlanVersion4 = z.strictObject({
  plan: JobPlan.check(
    z.refine(({ steps }) => steps.every(isWhole), {
      path: ['steps'],
      error: 'a step of a plan of version 4 misses no figure',
    }),
  ),
  decisionId: z.nullable(Id),
})

/** Version 4 to version 5: nothing changes. */
export const planToVersion5 = (payload: z.infer<typeof PlanVersion4>) => payload
