import { isFree, listCentsOf } from '@bayledger/reckoning/money/cover-bundles'
import type { LineCover } from '@bayledger/reckoning/money/line-cover'
import type { AdmitFacts } from '../../admit/facts.ts'
import { type Refusal, refuse } from '../../admit/refusal.ts'
import { holdsOneOf } from '../../admit/refuse-role.ts'
import type { DraftOfKind } from '../../entry.ts'
import { bundleMoney } from '../../questions/money.ts'
import { namedBundle } from '../../questions/named.ts'
import { coverRoles } from '../../role.ts'
import { isSameValue } from '../../same-value.ts'
import type { IssuedBundle, OrderState } from '../../state.ts'

/**
 * Why the cover of an estimate is refused: on a comeback its cause comes first, every line is judged as the terms have it, and
 * who decides against them may do so and says why.
 */
export const refuseCover = (
  state: OrderState,
  { payload: { scope } }: DraftOfKind<'estimate.issued'>,
  facts: AdmitFacts,
): Refusal | null => {
  if (state.opened?.comebackOf && state.comeback === null)
    return refuse('COMEBACK_NOT_JUDGED', { why: 'cause-missing' })
  for (const bundle of scope.bundles) {
    const why = unclearIn(state, bundle, facts)
    if (why) return refuse('ESTIMATE_COVER_UNCLEAR', { bundle: namedBundle(bundle), why })
  }
  return null
}

const unclearIn = (state: OrderState, bundle: IssuedBundle, facts: AdmitFacts) => {
  const covers = bundle.covers ?? []
  const lines = bundleMoney(facts.money, bundle.money)?.lines ?? []
  const judged = covers.map((cover): LineCover => ({ ...cover, decided: null }))
  if (!isSameValue(judged, facts.covers?.get(bundle.bundleKey) ?? [])) return 'differs'
  if (covers.some((cover) => cover.judged.is === 'open' && cover.decided === null)) return 'open'
  for (const line of lines) {
    const cover = covers.find(({ lineKey }) => lineKey === line.lineKey)
    const isCharged = line.amountCents === listCentsOf(line)
    if (cover ? isFree(cover) === isCharged || (isFree(cover) && line.amountCents !== 0) : line.cover)
      return 'price'
    if (cover && (cover.decided === null) !== (line.cover?.why == null)) return 'reason'
  }
  const decided = covers.filter((cover) => cover.decided !== null && !wasDecided(state, bundle, cover))
  return decided.length > 0 && !holdsOneOf(coverRoles, facts) ? 'role' : null
}

/** A decision that an earlier version holds stays, whoever issues the next. */
const wasDecided = (state: OrderState, { bundleKey }: IssuedBundle, cover: LineCover): boolean =>
  state.estimates.some(({ scope }) =>
    scope.bundles.some(
      (before) =>
        before.bundleKey === bundleKey && before.covers?.some((one) => isSameValue(one, cover)) === true,
    ),
  )
