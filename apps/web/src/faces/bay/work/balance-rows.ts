import { type BalanceLeft, balanceDoubt, mostShown, overLimit } from '@bayledger/reckoning/wheel/balance-left'
import {
  type BalancedFor,
  type BalanceUnit,
  gramsFromOunces,
  mostLeftGrams,
} from '@bayledger/reckoning/wheel/imbalance'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

const padLimits = { oz: { whole: 2, decimals: 2 }, g: { whole: 3, decimals: 0 } } as const

/**
 * First what the machine shows; its two figures are asked for only where it shows any, and that the wheel was balanced again
 * only where they are over what a side may have.
 */
export const balanceRows = (values: RowValues, on: BalancedFor): readonly Row[] => {
  const { shows } = values
  const left = leftOf(values)
  return [
    {
      kind: 'choice',
      key: 'shows',
      label: 'The machine shows',
      options: [
        { value: 'nothing', label: '0 oz left, inner and outer' },
        { value: 'oz', label: 'Ounces left' },
        { value: 'g', label: 'Grams left' },
        { value: 'no-figure', label: 'No figure' },
      ],
    },
    ...(isUnit(shows) ? [sideRow('inner', shows, on), sideRow('outer', shows, on)] : []),
    ...(left !== null && balanceDoubt(left, on)?.why === 'over' ? [againRow] : []),
  ]
}

const isUnit = (shows: string | null | undefined): shows is BalanceUnit => shows === 'oz' || shows === 'g'

const sideRow = (key: 'inner' | 'outer', unit: BalanceUnit, on: BalancedFor): Row => ({
  kind: 'number',
  key,
  label: `Left on the ${key} side`,
  unit,
  low: 0,
  high: mostShown[unit],
  limits: padLimits[unit],
  hint: `At most ${limitIn(unit, on)} ${unit} a side is usual here. The vehicle maker's own limit goes before it.`,
})

const againRow: Row = {
  kind: 'choice',
  key: 'again',
  label: 'Over what a side may have',
  hint: 'Balance it again and enter what is left then. If it stays over, say so.',
  options: [{ value: 'stays', label: 'Balanced again: it stays' }],
}

const limitIn = (unit: BalanceUnit, on: BalancedFor): string => {
  const grams = mostLeftGrams[on]
  return unit === 'g' ? String(grams) : (grams / gramsFromOunces(1)).toFixed(2)
}

/** What is recorded; `null` while a side is missing. */
export const balanceLeft = (values: RowValues, on: BalancedFor): BalanceLeft | null => {
  const left = leftOf(values)
  return left?.shows === 'figures' && overLimit(left, on) !== null
    ? { ...left, balancedAgain: values.again === 'stays' }
    : left
}

const leftOf = ({ shows, inner, outer }: RowValues): BalanceLeft | null => {
  if (shows === 'no-figure') return { shows }
  if (shows === 'nothing') return figures('oz', 0, 0)
  const [inside, outside] = [numberFrom(inner ?? ''), numberFrom(outer ?? '')]
  return isUnit(shows) && inside !== null && outside !== null ? figures(shows, inside, outside) : null
}

const figures = (unit: BalanceUnit, inner: number, outer: number): BalanceLeft => ({
  shows: 'figures',
  unit,
  inner,
  outer,
  balancedAgain: false,
})
