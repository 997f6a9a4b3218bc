import * as z from 'zod/mini'
import { Instant } from './text.ts'

const weekSeconds = 7 * 24 * 3_600

/**
 * How long something took by the tablet's own clock: when somebody started it, and the whole seconds that passed until it
 * was recorded. `null` where nothing was timed, as in every entry from before there was a clock.
 */
export const Timed = z.nullable(
  z.strictObject({ startedAt: Instant, seconds: z.int().check(z.gte(0), z.lte(weekSeconds)) }),
)
export type Timed = z.infer<typeof Timed>

/** A payload of the version before the clock, as one that nobody timed. */
export const untimed = <Payload extends object>(payload: Payload): Payload & { readonly timed: null } => ({
  ...payload,
  timed: null,
})
