import { workCautions } from '@bayledger/reckoning/cautions/work-cautions'
import { JobPlan } from '@bayledger/reckoning/step'
import * as z from 'zod/mini'
import { Id } from '../../text.ts'

/** Version 4 added the sound spare, with its caution, and took nothing away. */
export const PlanVersion3 = z.strictObject({
  plan: JobPlan.check(
    z.refine(
      ({ steps }) =>
        steps.every(
          ({ code, cautions }) =>
            code !== 'take-sound-spare-out' &&
            cautions.every(({ number }) => number !== workCautions.spare.number),
        ),
      { path: ['steps'], error: 'a plan of version 3 has only the steps that version 3 knew' },
    ),
  ),
  decisionId: z.nullable(Id),
})

/** Version 3 to version 4: nothing changes. */
export const planToVersion4 = (payload: z.infer<typeof PlanVersion3>) => payload
