import * as z from 'zod/mini'
import { type ErrorCode, errorCodes } from './errors.ts'

/** One field that is wrong: what was found there and what is allowed. */
export const FieldProblem = z.strictObject({ field: z.string(), found: z.string(), allowed: z.string() })
export type FieldProblem = z.infer<typeof FieldProblem>

/** So many are named at once, the first ones. */
export const mostFieldProblems = 40

/**
 * RFC 9457 problem details. `detail` says what to do; `fields` names every field that is wrong at
 * once, 40 of them at most; `current` is the stored version that a stale write met.
 */
export const Problem = z.strictObject({
  type: z.string(),
  title: z.string(),
  status: z.int(),
  code: z.enum(errorCodes as [ErrorCode, ...ErrorCode[]]),
  detail: z.string(),
  requestId: z.string(),
  fields: z.optional(z.array(FieldProblem).check(z.maxLength(mostFieldProblems))),
  current: z.optional(z.unknown()),
  sent: z.optional(z.unknown()),
  reason: z.optional(z.string()),
  retryAfterSeconds: z.optional(z.int()),
})
export type Problem = z.infer<typeof Problem>
