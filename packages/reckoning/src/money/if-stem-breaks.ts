import type { Bundle } from '../estimate.ts'
import { type SpecificationSheet, sensorOf } from '../sheet.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import type { OfferedBundle } from './offer.ts'
import { disposalLine, laborLine, sensorLine } from './price-lines.ts'
import type { PriceList } from './price-list.ts'

/**
 * The wheels whose metal stem is loosened by some bundles without a new sensor: seized by corrosion, it can break then, and its
 * sensor with it.
 *
 * @source Common practice, no source.
 */
export const stemsThatMayBreak = (bundles: readonly Pick<Bundle, 'works'>[]): WheelPosition[] => {
  const works = bundles.flatMap((bundle) => bundle.works)
  const renewed = new Set(works.flatMap((work) => (work.kind === 'fit-sensor' ? [work.wheel] : [])))
  return inReadingOrder(
    works.flatMap((work) =>
      work.kind === 'service-stem' && work.valve === 'clamp-in' && !renewed.has(work.wheel)
        ? [work.wheel]
        : [],
    ),
  )
}

/**
 * What is asked before a metal stem is loosened: whether to go on up to this price if it breaks. For one stem; the wheel is off
 * and the tire open anyway. `null` where no stem of a sensor is loosened.
 *
 * @units Cents; hours in hundredths.
 * @source Common practice, no source; the prices are the shop's own.
 */
export const ifStemBreaks = (
  prices: PriceList,
  sheet: SpecificationSheet,
  bundles: readonly Pick<Bundle, 'works'>[],
): OfferedBundle | null => {
  const [wheel] = stemsThatMayBreak(bundles)
  if (wheel === undefined || sheet.system !== 'direct' || sensorOf(sheet) === null) return null
  return {
    bundleKey: 'asked.if-stem-breaks',
    title: 'if-stem-breaks',
    findings: [],
    safety: false,
    cautions: [],
    alternativeTo: null,
    works: [],
    lines: [
      sensorLine(prices, sheet, [wheel]),
      laborLine(prices, 'relearn', 'program-and-relearn', prices.hours.relearnFirst),
      disposalLine(prices, [wheel]),
    ].map((line) => ({ ...line, wheels: [] })),
  }
}
