import { coverBundle, type JudgedComeback } from '@bayledger/reckoning/money/cover-bundles'
import type { ComebackCause } from '@bayledger/reckoning/money/line-cover'
import { offeredAgain, priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import { usualWarranty } from '@bayledger/reckoning/money/warranty'
import { comebackFacts, coversOfScope } from '../src/questions/comeback.ts'
import type { OrderState } from '../src/state.ts'
import { estimatePayload } from '../src/subjects/consent/estimate-payload.ts'
import { keptMoney, seal } from './money.ts'
import {
  decide,
  oneSensorJob,
  pricedOf,
  type Stage,
  stages,
  stageWriters,
  writeUp,
} from './one-sensor-job.ts'
import { type OrderPen, orderPen } from './order-pen.ts'
import { lead } from './shop.ts'
import { prices } from './tarn.ts'

/** The finished order in which the right rear sensor was renewed. */
export const earlierOrder = (): OrderState => oneSensorJob('handed-back').state()

/** The same vehicle again, joined to that order: its right rear sensor is silent once more. */
export const comebackUntil = (until: Stage, odometerMiles: number | null = 88_900): OrderPen => {
  const pen = orderPen('comeback')
  writeUp(pen, {
    comebackOf: earlierOrder().orderId,
    odometer: odometerMiles === null ? null : { value: odometerMiles, unit: 'mi' },
  })
  for (const stage of stages.slice(1, stages.indexOf(until) + 1)) stageWriters[stage](pen)
  return pen
}

export const asLead = { by: lead, deviceId: null }

export const ownWork = { cause: 'workmanship', words: null } as const

/** What the warranty of the comeback rests on. */
export const judgedComeback = (state: OrderState, cause: ComebackCause): JudgedComeback => ({
  ...comebackFacts(state, [earlierOrder()], usualWarranty, (instant) => instant.slice(0, 10)),
  cause,
})

/** A comeback whose customer said Yes to what the warranty covers. */
export const coveredComeback = (): OrderState => {
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
