import type { Torque } from '../quantity.ts'
import { torqueIn } from '../units/torque-units.ts'
import type { TorqueRound } from './torque-rounds.ts'

/** A torque wrench's scale, in its own unit. */
export type WrenchScale = {
  readonly rangeLow: number
  readonly rangeHigh: number
  readonly rangeUnit: Torque['unit']
}

export type TorqueSpan = { readonly low: number; readonly high: number; readonly unit: Torque['unit'] }

/**
 * The part of a wrench's scale in which its accuracy is tested: from 20 % of its highest figure, or where its
 * scale begins if that is higher.
 *
 * @formula max(lowest, 0.2 · highest) to highest.
 * @units The wrench's own. A wrench of 30 to 250 lbf·ft is good from 50 lbf·ft.
 * @source ISO 6789-1:2017 tests at 20, 60 and 100 %; read in a tool maker's summary.
 */
export const usableSpan = ({ rangeLow, rangeHigh, rangeUnit }: WrenchScale): TorqueSpan => ({
  low: Math.max(rangeLow, Math.round(rangeHigh * 20) / 100),
  high: rangeHigh,
  unit: rangeUnit,
})

/**
 * The part of a wrench's scale that is good for one round. A round whose figure counts needs the tested span. The first
 * round only draws the wheel flat and need not be exact: it may be set anywhere on the scale, but not outside of it.
 *
 * @formula half: lowest to highest; the others: `usableSpan`
 * @units The wrench's own.
 * @source ISO 6789-1:2017, as for `usableSpan`; that the first round need not be exact: common practice, no source.
 */
export const spanForRound = (round: TorqueRound, scale: WrenchScale): TorqueSpan =>
  round === 'half' ? { low: scale.rangeLow, high: scale.rangeHigh, unit: scale.rangeUnit } : usableSpan(scale)

/**
 * Whether a figure may be set on a wrench; its ends belong to the span.
 *
 * @units The figure in its own unit; it is compared in the wrench's.
 * @source As for `usableSpan`.
 */
export const isInSpan = (figure: Torque, { low, high, unit }: TorqueSpan): boolean => {
  const value = torqueIn(unit, figure)
  return value >= low && value <= high
}
