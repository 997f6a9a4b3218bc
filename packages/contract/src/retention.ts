import * as z from 'zod/mini'

const days = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most))

/** For how long the shop keeps what is of people. `null`: until an owner erases it. */
export const RetentionContent = z.strictObject({
  /** A customer without an order for so many years is erased. */
  customerYears: z.nullable(z.int().check(z.gte(1), z.lte(30))),
  /** A sealed report outlives the erasure of its customer for so many years from its sealing. */
  reportYears: z.int().check(z.gte(1), z.lte(30)),
  /** A write-up that nobody typed on since is thrown away. */
  draftDays: days(1, 365),
  /** The address of a message that was handed over or given up, and what the mail server said. */
  messageDays: days(7, 3_650),
  /** When a customer's link was opened. */
  openingDays: days(7, 3_650),
  /** A browser that is known and was not used, and where and in what a session that is over was. */
  browserDays: days(30, 3_650),
  /** What was refused and has been settled at the desk. */
  refusedDays: days(7, 3_650),
})
export type RetentionContent = z.infer<typeof RetentionContent>
