import type { OrderState } from '../state.ts'
import { isLook, newestBundles } from './answers.ts'
import type { LookTerms } from './look-cents.ts'
import { bundleTotals, lookFee, type MoneySides } from './money.ts'

/** The inspection as the customer agreed to it. Its price is in the estimate only where it is charged in any case. */
export const lookTermsOf = (state: OrderState, money: MoneySides): LookTerms => {
  const told = state.authority.look
  if (!told) return { terms: 'waived', cents: 0 }
  const own = newestBundles(state).find(isLook)
  const cents =
    told.lookFee === 'charged' && own
      ? bundleTotals(money, own)?.totalCents
      : lookFee(money, told.money)?.lookFeeCents
  return { terms: told.lookFee, cents: cents ?? 0 }
}
