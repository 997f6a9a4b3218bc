import type { PricedBundle } from '@bayledger/reckoning/estimate'
import { coverBundle, type JudgedComeback } from '@bayledger/reckoning/money/cover-bundles'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import { offeredAgain, priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import type { Appended } from '../../src/append.ts'
import { coversOfScope } from '../../src/questions/comeback.ts'
import { estimatePayload } from '../../src/subjects/consent/estimate-payload.ts'
import { asLead, comebackUntil, judgedComeback } from '../comeback.ts'
import { keptMoney, seal } from '../money.ts'
import { pricedOf } from '../one-sensor-job.ts'
import { advisor, type Person } from '../shop.ts'
import { prices } from '../tarn.ts'

const partFailed = { cause: 'part-failed', words: null } as const

/** The comeback of a sensor that failed. */
export const comeback: JudgedComeback = judgedComeback(comebackUntil('written-up').state(), 'part-failed')

/** The same, where nobody read the odometer. */
export const withoutMiles: JudgedComeback = { ...comeback, came: { ...comeback.came, miles: null } }

type Change = (bundle: OfferedBundle) => OfferedBundle

export const coverOf =
  (facts: JudgedComeback): Change =>
  (bundle) =>
    coverBundle(bundle, facts)

/** The sensor is charged against the terms. */
export const decidedAgainst =
  (why: string | null): Change =>
  (bundle) => {
    const decision = { bundleKey: bundle.bundleKey, lineKey: 'sensor', decided: 'charged' as const }
    const decided = coverBundle(bundle, comeback, [{ ...decision, why: why ?? '' }])
    const withoutWords = decided.lines.map(({ cover, ...line }) =>
      cover === undefined || line.lineKey === 'sensor' ? line : { ...line, cover },
    )
    return why === null ? { ...decided, lines: withoutWords } : decided
  }

/** The estimate of the comeback with its bundles changed, on what the terms say. */
export const attemptCovered = (
  change: Change,
  facts: JudgedComeback = comeback,
  by: Person = advisor,
): Appended => {
  const pen = comebackUntil('confirmed')
  pen.write('comeback.judged', partFailed, asLead)
  const estimate = pricedOf(pen)
  const bundles = estimate.bundles.map((bundle: PricedBundle) => change(offeredAgain(bundle)))
  const payload = estimatePayload(
    priceEstimate({ ...estimate, prices, bundles }),
    pen.state().diagnosis?.written.entryId ?? '',
    seal,
  )
  return pen.attempt('estimate.issued', payload, {
    ...{ by, deviceId: null },
    facts: { covers: coversOfScope(payload.scope, keptMoney, facts) },
  })
}
