import { customerCaution } from '../cautions/customer-cautions.ts'
import type { Finding } from '../diagnosis/diagnosis.ts'
import type { Work } from '../estimate.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import type { OfferedBundle, OfferOf } from './offer.ts'
import { kitLine, noChargeLine, tireLines, wheelServiceLines } from './price-lines.ts'
import { stemOf } from './stem-of.ts'

/** The findings that offer a tire: because the one that is there is dangerous, or because it is due soon. */
const offeringTires = ({ diagnosis }: OfferOf, urgent: boolean): Finding[] =>
  diagnosis.findings.filter(({ offers, kind }) => offers.includes('tire') && (kind === 'stop') === urgent)

/**
 * Wheels that get another tire because theirs is dangerous: nothing else is sold for that tire.
 *
 * @source This program's own rule.
 */
export const dangerousTires = (of: OfferOf): readonly WheelPosition[] =>
  of.prices.prices.tire === undefined
    ? []
    : inReadingOrder(offeringTires(of, true).flatMap(({ wheels }) => wheels))

/**
 * Wheels that get another tire and whose own was not opened by other work: the bundle of the tire then holds its
 * demounting, mounting and balancing.
 *
 * @source This program's own rule.
 */
export const tiresOfferedAnew = (of: OfferOf): readonly WheelPosition[] =>
  dangerousTires(of).filter((wheel) => !isSearched(of, wheel))

/**
 * A new tire for each wheel whose own is dangerous.
 *
 * @source This program's own rule.
 */
export const urgentTireBundles = (of: OfferOf): OfferedBundle[] =>
  tiresOfferedAnew(of).map((wheel) => tireBundle(of, wheel, offeringTires(of, true), true))

/**
 * A new tire for each wheel whose own was opened to find a leak and turned out to be beyond repair. It is demounted and
 * mounted once, so that work and the stem's parts are in the search alone.
 *
 * @source This program's own rule.
 */
export const openedTireBundles = (of: OfferOf): OfferedBundle[] =>
  dangerousTires(of)
    .filter((wheel) => isSearched(of, wheel))
    .map((wheel) => ({
      ...tireBundle(of, wheel, offeringTires(of, true), true),
      works: [{ kind: 'fit-tire', wheel }, { kind: 'set-pressures' }],
      lines: [...tireLines(of.prices, [wheel]), noChargeLine('pressures', 'pressures')],
    }))

const isSearched = ({ opened }: OfferOf, wheel: WheelPosition): boolean =>
  opened.searched.some((one) => one.wheel === wheel)

/**
 * A new tire for each wheel whose own is due soon, and that no other work opens.
 *
 * @source This program's own rule.
 */
export const dueTireBundles = (of: OfferOf, opened: readonly WheelPosition[]): OfferedBundle[] =>
  of.prices.prices.tire === undefined
    ? []
    : inReadingOrder(offeringTires(of, false).flatMap(({ wheels }) => wheels))
        .filter((wheel) => !opened.includes(wheel))
        .map((wheel) => tireBundle(of, wheel, offeringTires(of, false), false))

const tireBundle = (
  of: OfferOf,
  wheel: WheelPosition,
  findings: readonly Finding[],
  urgent: boolean,
): OfferedBundle => {
  const { prices, sheet } = of
  const valve = stemOf(sheet)
  const works: Work[] = [
    { kind: 'fit-tire', wheel },
    { kind: 'service-stem', wheel, valve },
    { kind: 'set-pressures' },
  ]
  return {
    bundleKey: `tire.${wheel}`,
    title: 'tire',
    findings: [
      ...new Set(findings.filter(({ wheels }) => wheels.includes(wheel)).map(({ code }) => code as string)),
    ],
    safety: urgent,
    cautions: [customerCaution(urgent ? 'CT-04' : 'CT-03')],
    alternativeTo: null,
    works,
    lines: [
      ...tireLines(prices, [wheel]),
      ...wheelServiceLines(prices, sheet, [wheel]),
      kitLine(prices, valve, [wheel]),
      noChargeLine('pressures', 'pressures'),
    ],
  }
}
