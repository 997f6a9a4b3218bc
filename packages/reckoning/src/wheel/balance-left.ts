import * as z from 'zod/mini'
import { type SpecificationSheet, tiresOf } from '../sheet.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { type BalancedFor, type BalanceUnit, inGrams, mostLeftGrams } from './imbalance.ts'

const side = z.number().check(z.gte(0))

/** What a balancer shows as left on each side. `balancedAgain`: it was over what a side may have, and the wheel was balanced once more. */
export const BalanceLeft = z.discriminatedUnion('shows', [
  z.strictObject({ shows: z.literal('no-figure') }),
  z.strictObject({
    shows: z.literal('figures'),
    unit: z.enum(['oz', 'g']),
    inner: side,
    outer: side,
    balancedAgain: z.boolean(),
  }),
])
export type BalanceLeft = z.infer<typeof BalanceLeft>

/**
 * The most that a balancer shows as left on a side; more is a slip of the finger.
 *
 * @units oz and g at the rim, a side
 * @source common practice, no source
 */
export const mostShown: Readonly<Record<BalanceUnit, number>> = { oz: 12, g: 350 }

export type WheelSide = 'inner' | 'outer'

/** Why what is left is not taken as it is. */
export type BalanceDoubt =
  | {
      readonly why: 'impossible'
      readonly side: WheelSide
      readonly found: number
      readonly unit: BalanceUnit
      readonly most: number
    }
  | {
      readonly why: 'over'
      readonly side: WheelSide
      readonly found: number
      readonly unit: BalanceUnit
      readonly limitGrams: number
    }

/** The heavier side, if it has more than a side may have. */
export type OverLimit = Extract<BalanceDoubt, { why: 'over' }>

/**
 * The kind of vehicle whose limit counts for a wheel, by the load class of the sheet's tire: light-truck and commercial tires
 * may keep more. Without a tire on the sheet the wider limit counts: it is exceeded by no wheel that is right.
 *
 * @source the limits as in `mostLeftGrams`; that the load class decides: common practice, no source
 */
export const balancedFor = (sheet: SpecificationSheet | undefined, wheel: WheelPosition): BalancedFor => {
  const loadClass = tiresOf(sheet)?.[axleOf(wheel)]?.loadClass
  return loadClass === undefined || loadClass === 'C' || loadClass.startsWith('LT') ? 'light-truck' : 'car'
}

/**
 * Whether more is left on a side than may be; `null` where it is within the limit or the machine shows no figure.
 *
 * @units oz or g at the rim, a side
 * @source as in `mostLeftGrams`
 */
export const overLimit = (left: BalanceLeft, on: BalancedFor): OverLimit | null => {
  if (left.shows === 'no-figure') return null
  const { unit } = left
  const heavier = left.outer > left.inner ? 'outer' : 'inner'
  const limitGrams = mostLeftGrams[on]
  return inGrams(left[heavier], unit) > limitGrams + 1e-9
    ? { why: 'over', side: heavier, found: left[heavier], unit, limitGrams }
    : null
}

/**
 * What keeps a figure from being recorded: more than a balancer shows, and more than a side may have as long as nobody has
 * balanced the wheel again.
 *
 * @units oz or g at the rim, a side
 * @source the most that a balancer shows: common practice, no source; the limit as in `mostLeftGrams`
 */
export const balanceDoubt = (left: BalanceLeft, on: BalancedFor): BalanceDoubt | null => {
  if (left.shows === 'no-figure') return null
  const { unit } = left
  const most = mostShown[unit]
  const side = left.inner > most ? 'inner' : left.outer > most ? 'outer' : null
  if (side !== null) return { why: 'impossible', side, found: left[side], unit, most }
  return left.balancedAgain ? null : overLimit(left, on)
}
