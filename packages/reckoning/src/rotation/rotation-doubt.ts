import * as z from 'zod/mini'

/** What a sheet, or the rest of the order, has against a rotation before a tire was looked at. */
export const RotationDoubt = z.enum([
  'other-set-in-same-order',
  'two-patterns',
  'axles-differ',
  'no-spare',
  'spare-temporary',
  'spare-size-differs',
  'tires-not-on-sheet',
])
export type RotationDoubt = z.infer<typeof RotationDoubt>
