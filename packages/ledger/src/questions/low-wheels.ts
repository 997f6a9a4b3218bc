import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { pressureAsLeft } from './as-left.ts'
import { psi } from './evidence-of.ts'
import { placardPsi } from './gates.ts'

/** 2 psi under the label is where the findings begin to call a tire low. */
export const lowByPsi = 2

/** A wheel whose tire was last read under its label; psi as read. */
export type LowWheel = { readonly wheel: WheelPosition; readonly psi: number; readonly label: number }

/** Tires that were last read at least 2 psi under their label, the spare too, in reading order. */
export const lowAsLeft = (state: OrderState): readonly LowWheel[] =>
  lowBy(state, (wheel) => pressureAsLeft(state, wheel) ?? state.arrival.wheels[wheel]?.gauge?.pressure)

/** Tires that came in at least 2 psi under their label, the spare too, in reading order. */
export const lowOnArrival = (state: OrderState): readonly LowWheel[] =>
  lowBy(state, (wheel) => state.arrival.wheels[wheel]?.gauge?.pressure)

const lowBy = (
  state: OrderState,
  held: (wheel: WheelPosition) => Parameters<typeof psi>[0] | undefined,
): readonly LowWheel[] =>
  readingOrder.flatMap((wheel): LowWheel[] => {
    const pressure = held(wheel)
    const label = placardPsi(state, wheel)
    if (!pressure || label === null) return []
    const value = psi(pressure)
    return value <= label - lowByPsi ? [{ wheel, psi: value, label }] : []
  })
