import { JobPlan, type PlannedStep } from '@bayledger/reckoning/step'
import * as z from 'zod/mini'
import { Id } from '../../text.ts'

/** The steps that version 2 of `plan.issued` knew. Version 3 added steps and took none away, so a plan of version 2 is one of version 3. */
const codes: ReadonlySet<PlannedStep['code']> = new Set([
  'confirm-placard',
  'confirm-frequency',
  'confirm-stud-torque',
  'find-leak',
  'match-tire',
  'match-sensor',
  'program-sensor',
  'read-other-wheel',
  'check-tires-for-rotation',
  'take-spare-out',
  'stow-spare',
  'take-wheel-off',
  'repair-fastener',
  'open-tire',
  'look-inside',
  'judge-leak',
  'repair-leak',
  'fit-sensor',
  'renew-stem',
  'read-in-rim',
  'seat-tire',
  'torque-core',
  'check-leaks',
  'balance-wheel',
  'put-wheel-on',
  'torque-studs',
  'torque-after-miles',
  'check-torque',
  'set-pressure',
  'relearn',
  'read-sensor',
  'compare-stored',
  'proof-drive',
  'see-light',
  'last-look',
])

export const PlanVersion2 = z.strictObject({
  plan: JobPlan.check(
    z.refine(({ steps }) => steps.every(({ code }) => codes.has(code)), {
      path: ['steps'],
      error: 'a plan of version 2 has only the steps that version 2 knew',
    }),
  ),
  decisionId: z.nullable(Id),
})

/** Version 2 to version 3: nothing changes. */
export const planToVersion3 = (payload: z.infer<typeof PlanVersion2>) => payload
