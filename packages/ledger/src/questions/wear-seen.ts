import {
  type TreadAcross,
  type WearHint,
  type WearSeen,
  wearHint,
} from '@bayledger/reckoning/tire/wear-hints'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'

/** What of a tire's wear hints at something; `null` where nothing does, or nobody read it. */
export type WearAt = {
  readonly across: { readonly read: TreadAcross; readonly hint: Exclude<WearHint, 'even'> } | null
  readonly around: Exclude<WearSeen, 'none'> | null
}

/** What the wear of a wheel's tire hints at, as it came. */
export const wearAt = (state: OrderState, wheel: WheelPosition): WearAt => {
  const { treadAcross, wearSeen } = state.arrival.tires[wheel] ?? {}
  const hint = treadAcross === undefined ? 'even' : wearHint(treadAcross)
  return {
    across: treadAcross === undefined || hint === 'even' ? null : { read: treadAcross, hint },
    around: wearSeen === undefined || wearSeen === 'none' ? null : wearSeen,
  }
}
