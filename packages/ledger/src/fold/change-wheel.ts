import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { type OrderState, untouchedWheel, type WheelWork } from '../state.ts'

export const changeWheel = (
  state: OrderState,
  wheel: WheelPosition,
  change: (work: WheelWork) => WheelWork,
): OrderState => ({ ...state, work: { ...state.work, [wheel]: change(state.work[wheel] ?? untouchedWheel) } })
