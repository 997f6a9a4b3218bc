import { Bundle } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { MoneyDigest } from '../../side-kinds.ts'
import { Instant } from '../../text.ts'

/**
 * What one version of an estimate offers, without money: each bundle and the whole name their money by the digest of a
 * side. A bundle that a later version leaves as it was names the same side: an equal digest means equal to the cent.
 */
export const EstimateScope = z.strictObject({
  revision: z.int().check(z.positive()),
  readyAt: z.nullable(Instant),
  bundles: z.array(z.strictObject({ ...Bundle.shape, money: MoneyDigest })).check(z.minLength(1)),
  money: MoneyDigest,
})
export type EstimateScope = z.infer<typeof EstimateScope>
