import * as z from 'zod/mini'

/** A caution by its number and the version of its words: the words themselves are kept by version where they are read. */
export const CautionReference = z.strictObject({
  number: z.string().check(z.regex(/^C[TW]-\d\d$/)),
  version: z.int().check(z.positive()),
})
export type CautionReference = z.infer<typeof CautionReference>
