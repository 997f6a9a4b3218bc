import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import type { OrderState } from '../state.ts'
import { authorizedBundles, isLook } from './answers.ts'
import { isLookCharged } from './look-cents.ts'

/** Whether the look is charged, by the terms that the customer agreed to and by what they authorized since. */
export const lookIsOwed = (state: OrderState): boolean =>
  isLookCharged(
    state.authority.look?.lookFee ?? 'waived',
    authorizedBundles(state).some((bundle) => !isLook(bundle) && !isConditional(bundle)),
  )
