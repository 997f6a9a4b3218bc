import { openedTires } from '@bayledger/ledger/questions/authorized-works'
import { agreedSearches, type MoneySides, pricedEstimate } from '@bayledger/ledger/questions/money'
import type { OrderState } from '@bayledger/ledger/state'
import type { PricedBundle, PricedEstimate } from '@bayledger/reckoning/estimate'
import { isAdded } from '@bayledger/reckoning/money/added-bundles'
import {
  type CoverDecision,
  coverBundle,
  type JudgedComeback,
} from '@bayledger/reckoning/money/cover-bundles'
import { type LineDiscount, lineDiscountsIn } from '@bayledger/reckoning/money/line-discounts'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import type { Discount } from '@bayledger/reckoning/money/price-book'
import { offeredAgain, priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import { dayIn, instantOf } from '@bayledger/reckoning/ready/zoned-time'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'

/** What an advisor has chosen for the next version of an estimate. */
export type EstimateDraft = {
  /** Of what the findings offer: left out. */
  readonly left: readonly string[]
  /** Jobs that the customer asked for, and what was added by hand. */
  readonly added: readonly OfferedBundle[]
  readonly lineDiscounts: readonly LineDiscount[]
  /** On a comeback: what was decided against the warranty terms. */
  readonly decisions: readonly CoverDecision[]
  /** The discount of the price book on all work; empty: none. */
  readonly discount: string
  readonly exemption: string
  /** As the shop's clock is read; empty: no time is promised. */
  readonly readyAt: string
  /** `null`: today. */
  readonly readyOn: string | null
}

/** The newest version with its money; `null` where there is none or its money is not here. */
export const newestPriced = (state: OrderState, sides: MoneySides): PricedEstimate | null => {
  const scope = state.estimates.at(-1)?.scope
  return scope === undefined ? null : pricedEstimate(sides, scope)
}

/** A draft that goes on from the newest version: what was added to it and taken off it is kept. */
export const startDraft = (before: PricedEstimate | null, discounts: readonly Discount[]): EstimateDraft => {
  const bundles = before?.bundles ?? []
  const lines = bundles.flatMap(({ money }) => money.lines)
  return {
    left: [],
    added: bundles.filter(isAdded).map(offeredAgain),
    lineDiscounts: bundles.flatMap(({ bundleKey, money }) => lineDiscountsIn(bundleKey, money.lines)),
    decisions: bundles.flatMap(decisionsIn),
    discount:
      discounts.find(({ key }) => lines.some(({ priceCode }) => priceCode === `discount.${key}`))?.key ?? '',
    exemption: before?.money.exemption ?? '',
    readyAt: '',
    readyOn: null,
  }
}

/** What a version before has decided against the warranty terms, so that the next one keeps it. */
const decisionsIn = ({ bundleKey, covers = [], money }: PricedBundle): CoverDecision[] =>
  covers.flatMap(({ lineKey, decided }) => {
    const why = money.lines.find((line) => line.lineKey === lineKey)?.cover?.why ?? null
    return decided === null || why === null ? [] : [{ bundleKey, lineKey, decided, why }]
  })

/** What the confirmed findings offer; none where nothing is confirmed yet. */
export const offeredFor = (
  state: OrderState,
  sheet: SpecificationSheet,
  prices: PriceList,
): OfferedBundle[] =>
  state.diagnosis === null
    ? []
    : offerBundles({
        diagnosis: state.diagnosis.diagnosis,
        sheet,
        prices,
        look: state.authority.look?.lookFee ?? 'waived',
        opened: openedTires(state),
      })

/** A line for safety is the customer's to decline, and the inspection was agreed to before. */
const staysOn = ({ safety, alternativeTo, works }: OfferedBundle): boolean =>
  (safety && alternativeTo === null) || (works.length > 0 && works.every(({ kind }) => kind === 'look'))

/** The bundles that stay of what the findings offer, then those that were added. What lost its counterpart is on its own. */
export const keptBundles = (
  offered: readonly OfferedBundle[],
  { left, added }: EstimateDraft,
): OfferedBundle[] => {
  const kept = offered.filter(
    (bundle) =>
      staysOn(bundle) ||
      (!left.includes(bundle.bundleKey) &&
        !(bundle.alternativeTo !== null && left.includes(bundle.alternativeTo))),
  )
  const there = new Set([...kept, ...added].map(({ bundleKey }) => bundleKey))
  const own = added.map((bundle) =>
    bundle.alternativeTo !== null && !there.has(bundle.alternativeTo)
      ? { ...bundle, alternativeTo: null }
      : bundle,
  )
  const isLook = ({ bundleKey }: OfferedBundle) => bundleKey === 'look'
  return [...kept.filter((bundle) => !isLook(bundle)), ...own, ...kept.filter(isLook)]
}

type DraftOf = {
  readonly state: OrderState
  readonly sides: MoneySides
  readonly offered: readonly OfferedBundle[]
  readonly prices: PriceList
  readonly discounts: readonly Discount[]
  readonly before: PricedEstimate | null
  /** What the warranty of a comeback rests on; `null`: it is none. */
  readonly comeback: JudgedComeback | null
  /** Of the shop, wherever the desk's own clock is. */
  readonly timeZone: string
}

/** When the work is to be ready; `null`: no time is promised, or it is half typed. */
export const readyOf = ({ readyAt, readyOn }: EstimateDraft, timeZone: string): string | null =>
  instantOf(readyOn ?? dayIn(new Date(), timeZone), readyAt, timeZone)

/** The next version as it would be issued. What was added before and is as it was keeps its price. */
export const estimateOf = (
  { state, sides, offered, prices, discounts, before, comeback, timeZone }: DraftOf,
  draft: EstimateDraft,
): PricedEstimate =>
  priceEstimate({
    bundles: keptBundles(offered, draft).map((bundle) =>
      comeback === null ? bundle : coverBundle(bundle, comeback, draft.decisions),
    ),
    prices,
    revision: state.estimates.length + 1,
    agreed: new Map([
      // The warranty is judged anew with each version.
      ...(comeback === null ? agreedSearches(state, sides) : []),
      ...(before?.bundles ?? [])
        .filter((bundle) => isAdded(bundle) && isUntouched(bundle, draft))
        .map(({ bundleKey, money }) => [bundleKey, money] as const),
    ]),
    discount: discounts.find(({ key }) => key === draft.discount) ?? null,
    lineDiscounts: draft.lineDiscounts,
    exemption: draft.exemption.trim() === '' ? null : draft.exemption.trim(),
    readyAt: readyOf(draft, timeZone),
  })

/** Whether the draft holds of a bundle what the version before held, so that its price stays. */
const isUntouched = (
  { bundleKey, money }: PricedBundle,
  { added, lineDiscounts, discount }: EstimateDraft,
) => {
  const now = added.find((bundle) => bundle.bundleKey === bundleKey)
  const again = money.lines.filter(({ kind }) => kind !== 'discount')
  const off = (list: readonly LineDiscount[]) =>
    JSON.stringify(list.filter((one) => one.bundleKey === bundleKey))
  const given = money.lines.find(({ priceCode }) => /^discount\.(?!line$)/.test(priceCode))
  return (
    now?.lines.every(({ lineKey, amountCents }) =>
      again.some((line) => line.lineKey === lineKey && line.amountCents === amountCents),
    ) === true &&
    off(lineDiscounts) === off(lineDiscountsIn(bundleKey, money.lines)) &&
    (given?.priceCode ?? 'discount.') === `discount.${discount}`
  )
}
