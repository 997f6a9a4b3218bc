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

const gate = z.enum(['road', 'hand-back', 'seal'])

/**
 * A gate that stays closed until a person settles a true fact whose writer could not know better: codes and values.
 * Entries of an older ledger hold it in words, which are printed as they were written.
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
  z.strictObject({ code: plainText(60), gate, words: plainText(300) }),
])
export type Hold = z.infer<typeof Hold>
