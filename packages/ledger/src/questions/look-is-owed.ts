import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import type { OrderState } from '../state.ts'
import { authorizedBundles, isLook } from './answers.ts'

/** Whether the look is charged, by the terms that the customer agreed to and by what they authorized since. */
export const lookIsOwed = (state: OrderState): boolean => {
  switch (state.authority.look?.lookFee) {
    case 'charged':
      return true
    case 'waived-with-work':
      return authorizedBundles(state).every((bundle) => isLook(bundle) || isConditional(bundle))
    default:
      return false
  }
}
