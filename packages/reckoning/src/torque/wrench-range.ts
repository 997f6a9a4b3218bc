import type { Torque } from '../quantity.ts'
import { torqueIn } from '../units/torque-units.ts'

/** A torque wrench's scale, in its own unit. */
export type WrenchScale = {
  readonly rangeLow: number
  readonly rangeHigh: number
  readonly rangeUnit: Torque['unit']
}

export type TorqueSpan = { readonly low: number; readonly high: number; readonly unit: Torque['unit'] }

/**
 * The part of a wrench's scale in which its accuracy is tested: from 20 % of its highest figure, or where its
 * scale begins if that is higher (ISO 6789-1:2017 tests at 20, 60 and 100 %; read in a tool maker's summary).
 * A wrench of 30 to 250 lbf·ft is good from 50 lbf·ft.
 */
export const usableSpan = ({ rangeLow, rangeHigh, rangeUnit }: WrenchScale): TorqueSpan => ({
  low: Math.max(rangeLow, Math.round(rangeHigh * 20) / 100),
  high: rangeHigh,
  unit: rangeUnit,
})

/** Whether a figure may be set on a wrench; its ends belong to the span. */
export const isInSpan = (figure: Torque, { low, high, unit }: TorqueSpan): boolean => {
  const value = torqueIn(unit, figure)
  return value >= low && value <= high
}

/**
 * Clicks after which a torque wrench is due for calibration where its user set no other interval; twelve months
 * come first if they pass sooner (ISO 6789, as torque tool makers restate it).
 */
export const wrenchCycles = 5_000
