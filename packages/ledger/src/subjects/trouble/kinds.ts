import { StepKey } from '@bayledger/reckoning/step'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { kind } from '../../kind.ts'
import { roles } from '../../role.ts'
import { PersonalDigest } from '../../side-kinds.ts'

/** What can be wrong at any step. */
export const TroubleKind = z.enum([
  'stud',
  'seat',
  'thread',
  'cut',
  'run-low-inside',
  'cord',
  'separation',
  'seized',
  'silent',
  'wrong-part',
  'other',
])
export type TroubleKind = z.infer<typeof TroubleKind>

export const troubleKinds = {
  /**
   * Something is not right: it parks the wheel until it is decided and put right. `stepKey`: the step of the plan at
   * which it was found; `null` before there is a plan. A photo of it names this entry in its `restsOn`.
   */
  'trouble.found': kind(
    z.strictObject({
      stepKey: z.nullable(StepKey),
      wheel: z.nullable(WheelPosition),
      what: TroubleKind,
      words: z.nullable(PersonalDigest),
    }),
    { roles, sides: ['personal'] },
  ),
}
