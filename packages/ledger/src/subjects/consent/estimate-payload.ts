import type { PricedEstimate } from '@bayledger/reckoning/estimate'
import { digestOf } from '../../digests.ts'
import type { PayloadOf } from '../../registry.ts'

/**
 * A priced estimate as the payload of `estimate.issued`: its scope, with the digest of a side in the place of each sum
 * of money. `seal` puts one content into a side and gives the digest; for content that an earlier version already has
 * a side for, it gives that side's digest, so that an answer to an unchanged bundle holds.
 */
export const estimatePayload = (
  { revision, readyAt, bundles, money }: PricedEstimate,
  diagnosisId: string,
  seal: (content: object) => string,
): PayloadOf<'estimate.issued'> => {
  const scope = {
    revision,
    readyAt,
    bundles: bundles.map((bundle) => ({ ...bundle, money: seal(bundle.money) })),
    money: seal(money),
  }
  return { diagnosisId, scope, digest: digestOf(scope) }
}
