import * as z from 'zod/mini'
import { Instant } from './text.ts'

const weekSeconds = 7 * 24 * 3_600
const Seconds = z.int().check(z.gte(0), z.lte(weekSeconds))

/**
 * The tablet slept or was started anew meanwhile, so its seconds are those of the clock of the day. `steadySeconds`: what its
 * steady clock counted, which stands still in sleep; null where it was started anew. `corrected`: the server's time was
 * known at both ends.
 */
const Across = z.strictObject({ steadySeconds: z.nullable(Seconds), corrected: z.boolean() })

/**
 * How long something took by the tablet's own clock: when somebody started it, and the whole seconds that passed until it
 * was recorded, by the steady clock while the tablet was awake. `null` where nothing was timed, as in every entry from
 * before there was a clock.
 */
export const Timed = z.nullable(
  z.strictObject({ startedAt: Instant, seconds: Seconds, across: z.optional(Across) }),
)
export type Timed = z.infer<typeof Timed>

/** A payload of the version before the clock, as one that nobody timed. */
export const untimed = <Payload extends object>(payload: Payload): Payload & { readonly timed: null } => ({
  ...payload,
  timed: null,
})
