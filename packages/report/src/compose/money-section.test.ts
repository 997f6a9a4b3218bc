import { coversOfScope } from '@bayledger/ledger/questions/comeback'
import { estimatePayload } from '@bayledger/ledger/subjects/consent/estimate-payload'
import { coverBundle } from '@bayledger/reckoning/money/cover-bundles'
import { offeredAgain, priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import { spanish } from '@bayledger/wording/es/spanish'
import { expect, it } from 'vitest'
import { asLead, comebackUntil, judgedComeback } from '../../../ledger/test-support/comeback.ts'
import { keptMoney, seal } from '../../../ledger/test-support/money.ts'
import { decide, pricedOf } from '../../../ledger/test-support/one-sensor-job.ts'
import { prices } from '../../../ledger/test-support/tarn.ts'
import { reportContext } from '../../test-support/worked-context.ts'
import { moneySection } from './money-section.ts'

/** A comeback whose customer said Yes to what the warranty covers. */
const comeback = () => {
  const pen = comebackUntil('confirmed')
  pen.write('comeback.judged', { cause: 'part-failed', words: null }, asLead)
  const facts = judgedComeback(pen.state(), 'part-failed')
  const offered = pricedOf(pen)
  const bundles = offered.bundles.map((bundle) => coverBundle(offeredAgain(bundle), facts))
  const payload = estimatePayload(
    priceEstimate({ ...offered, prices, bundles }),
    pen.state().diagnosis?.written.entryId ?? '',
    seal,
  )
  const covers = coversOfScope(payload.scope, keptMoney, facts)
  pen.write('estimate.issued', payload, { ...asLead, facts: { covers } })
  decide(pen, 'authorized')
  return pen.state()
}

const textOf = (section: ReturnType<typeof moneySection>): string => JSON.stringify(section.blocks)

it('prints beside a covered line what it would have cost and until when, in the language of the report', () => {
  const state = comeback()
  expect(textOf(moneySection(state, reportContext))).toMatch(
    /Wheel sensor, 315 MHz.*Covered by our warranty: \$0\.00 \(would be \$\d+\.\d\d\)\. We put in this sensor on order T-2602\. The warranty is good until Jan 12, 2028 or 112,141 miles\./,
  )
  expect(textOf(moneySection(state, { ...reportContext, language: spanish }))).toMatch(
    /Lo cubre nuestra garantía: \$0\.00 \(costaría \$\d+\.\d\d\)\. Pusimos este sensor en la orden T-2602\./,
  )
})
