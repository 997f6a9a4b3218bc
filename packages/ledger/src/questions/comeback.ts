import { coversOf, type JudgedComeback } from '@bayledger/reckoning/money/cover-bundles'
import type { ComebackFacts, EarlierWork, LineCover } from '@bayledger/reckoning/money/line-cover'
import type { WarrantyTerms } from '@bayledger/reckoning/money/warranty'
import { distanceIn } from '@bayledger/reckoning/units/length-units'
import { readingOrder } from '@bayledger/reckoning/wheels'
import type { IssuedEstimate, OrderState } from '../state.ts'
import { workedAt } from './history-of.ts'
import { bundleMoney, type MoneySides } from './money.ts'

/**
 * What a finished order did, as far as a warranty can rest on it; `null` of one whose keys are not back, because a warranty
 * begins with that. `dayOf` gives the day at an instant on the clock of the shop.
 */
export const earlierWork = (state: OrderState, dayOf: (instant: string) => string): EarlierWork | null => {
  const { opened, handedBack, work, relearn } = state
  if (!opened || !handedBack) return null
  return {
    orderNumber: opened.orderNumber ?? '',
    done: { day: dayOf(handedBack.written.writtenAt), miles: milesAsItCame(state) },
    wheels: readingOrder.filter((wheel) => workedAt(state, wheel).length > 0),
    sensors: readingOrder.filter((wheel) => work[wheel]?.fitted),
    relearned: relearn !== null,
  }
}

const milesAsItCame = ({ opened }: OrderState): number | null =>
  opened?.odometer ? Math.round(distanceIn('mi', opened.odometer)) : null

/**
 * What the cover of a comeback rests on beside its cause: `joined` are the order that it is joined to and those that one is joined
 * to itself, newest first.
 */
export const comebackFacts = (
  state: OrderState,
  joined: readonly OrderState[],
  terms: WarrantyTerms,
  dayOf: (instant: string) => string,
): ComebackFacts => ({
  // As of when it came, however long the work takes.
  came: { day: dayOf(state.opened?.written.writtenAt ?? ''), miles: milesAsItCame(state) },
  terms,
  works: joined.flatMap((order) => earlierWork(order, dayOf) ?? []),
})

/** What the terms say of each line of an estimate, by bundle: the server computes it again before it admits one. */
export const coversOfScope = (
  { bundles }: IssuedEstimate['scope'],
  sides: MoneySides,
  comeback: JudgedComeback,
): ReadonlyMap<string, readonly LineCover[]> =>
  new Map(
    bundles.map((bundle) => [
      bundle.bundleKey,
      coversOf({ ...bundle, lines: bundleMoney(sides, bundle.money)?.lines ?? [] }, comeback),
    ]),
  )
