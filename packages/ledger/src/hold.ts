import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { Instant, plainText } from './text.ts'

/** What the register knew of a wrench when a torque round with it arrived. */
export const WrenchDoubt = z.discriminatedUnion('why', [
  z.strictObject({ why: z.literal('day'), wrench: plainText(60), dueOn: plainText(10) }),
  z.strictObject({ why: z.literal('cycles'), wrench: plainText(60), cycles: z.int(), dueAt: z.int() }),
  z.strictObject({ why: z.literal('quarantined'), wrench: plainText(60) }),
])
export type WrenchDoubt = z.infer<typeof WrenchDoubt>

/** The time of an entry by its device's clock, and the time when the server received it. */
export const ClockDoubt = z.strictObject({ writtenAt: Instant, receivedAt: Instant })
export type ClockDoubt = z.infer<typeof ClockDoubt>

/**
 * The minutes of a drive as they were typed, and the most that the clock allows: the whole minutes between leaving and
 * coming back, or, where nobody timed the drive, those since the vehicle was last worked on. `clocks`: the two clocks of the
 * tablet contradict each other, and these are the minutes of the lesser.
 */
export const DriveDoubt = z.strictObject({
  typed: z.number(),
  clock: z.int(),
  by: z.enum(['timed', 'entries', 'clocks']),
})
export type DriveDoubt = z.infer<typeof DriveDoubt>

/** For which reason an entry would have been refused, had its writer heard what others had written. */
export const LateDoubt = z.strictObject({ refusal: plainText(60) })
export type LateDoubt = z.infer<typeof LateDoubt>

const gate = z.enum(['road', 'hand-back', 'seal'])

/**
 * A gate that stays closed until a person settles a true fact whose writer could not know better: codes and values. A hold
 * on the proof closes no gate: the light is not proven to stay off meanwhile. Entries of an older ledger hold it in words,
 * which are printed as they were written.
 */
export const Hold = z.union([
  z.strictObject({
    code: z.literal('wrench-doubtful'),
    gate,
    wheel: z.nullable(WheelPosition),
    values: WrenchDoubt,
  }),
  z.strictObject({
    code: z.literal('device-clock-doubtful'),
    gate,
    wheel: z.null(),
    values: ClockDoubt,
  }),
  z.strictObject({
    code: z.literal('drive-minutes-doubtful'),
    gate: z.literal('proof'),
    wheel: z.null(),
    values: DriveDoubt,
  }),
  z.strictObject({
    code: z.literal('heard-late'),
    gate: z.enum(['road', 'seal']),
    wheel: z.nullable(WheelPosition),
    values: LateDoubt,
  }),
  z.strictObject({ code: plainText(60), gate, words: plainText(300) }),
])
export type Hold = z.infer<typeof Hold>
