import type { Location } from '@bayledger/contract/settings'
import { authorizedBundles } from '@bayledger/ledger/questions/answers'
import { authorizedCents } from '@bayledger/ledger/questions/money'
import type { PricedBundle } from '@bayledger/reckoning/estimate'
import { OverrunRule, overrunLimit } from '@bayledger/reckoning/money/overrun'
import { totalsOfBundles } from '@bayledger/reckoning/money/totals'
import { orderMoney } from '../../../../features/ledger/order-money.ts'
import { money } from '../../../../lib/format.ts'
import type { OrderPart } from '../order-part.ts'

type ChangedAmountProps = OrderPart & { places: readonly Location[]; after: readonly PricedBundle[] }

/**
 * What the law of the order's place, as the owner entered it, says of a bill over what was authorized. Whatever it lets pass, every
 * change here needs a new answer.
 */
export function ChangedAmount({ order, places, after }: ChangedAmountProps) {
  const agreed = authorizedCents(order.state, orderMoney(order))
  const place = places.find(({ locationId }) => locationId === order.state.locationId)
  if (agreed === null || agreed <= 0 || place === undefined) return null
  const rule = OverrunRule.safeParse(place.lawProfile.overrun)
  if (!rule.success) return null
  const limit = overrunLimit(rule.data, agreed)
  const before = new Set(order.state.estimates.at(-1)?.scope.bundles.map(({ bundleKey }) => bundleKey))
  const yes = new Set(authorizedBundles(order.state).map(({ bundleKey }) => bundleKey))
  const { totalCents } = totalsOfBundles(
    after.filter(({ bundleKey }) => yes.has(bundleKey) || !before.has(bundleKey)),
  )
  return (
    <section aria-label="Against what was authorized">
      <p>
        The customer authorized {money(agreed)}. With what is new here it would be {money(totalCents)}.
      </p>
      <p>
        {place.name}: by the law as your owner {place.lawProfile.confirmedOn ? 'confirmed' : 'left'} it, the
        bill may be{' '}
        {limit === agreed
          ? 'no cent over what was authorized'
          : `${money(limit)} at most, unless the customer is asked again`}
        .{totalCents > limit ? ' This is over it.' : ''} Every change needs a new answer here all the same.
      </p>
    </section>
  )
}
