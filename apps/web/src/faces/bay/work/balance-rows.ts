import { gramsFromOunces, mostLeftGrams } from '@bayledger/reckoning/wheel/imbalance'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

/** What a balancer can show as left on a side; more is a slip of the finger (common practice, no source). */
const units = {
  oz: { most: 12, limits: { whole: 2, decimals: 2 } },
  g: { most: 350, limits: { whole: 3, decimals: 0 } },
} as const
type BalanceUnit = keyof typeof units

const nothingLeft = '0 oz left, inner and outer'
const noFigure = 'the machine shows no figure'

/** First what the machine shows; its two figures are asked for only where it shows any. */
export const balanceRows = ({ shows }: RowValues): readonly Row[] => [
  {
    kind: 'choice',
    key: 'shows',
    label: 'The machine shows',
    options: [
      { value: 'nothing', label: nothingLeft },
      { value: 'oz', label: 'Ounces left' },
      { value: 'g', label: 'Grams left' },
      { value: 'no-figure', label: 'No figure' },
    ],
  },
  ...(isUnit(shows) ? [sideRow('inner', shows), sideRow('outer', shows)] : []),
]

const isUnit = (shows: string | null | undefined): shows is BalanceUnit => shows === 'oz' || shows === 'g'

const sideRow = (key: 'inner' | 'outer', unit: BalanceUnit): Row => ({
  kind: 'number',
  key,
  label: `Left on the ${key} side`,
  unit,
  low: 0,
  high: units[unit].most,
  limits: units[unit].limits,
  hint: `At most ${limitIn(unit, 'car')} ${unit} a side is usual on a car, ${limitIn(unit, 'light-truck')} ${unit} on a light truck. The vehicle maker's own limit goes before it.`,
})

const limitIn = (unit: BalanceUnit, kind: 'car' | 'light-truck'): string => {
  const grams = mostLeftGrams[kind]
  return unit === 'g' ? String(grams) : (grams / gramsFromOunces(1)).toFixed(2)
}

/** What is recorded, in one form whoever writes it: "0.25 oz left inside, 0.5 oz outside"; `null` while a side is missing. */
export const balanceWords = ({ shows, inner, outer }: RowValues): string | null => {
  if (shows === 'nothing') return nothingLeft
  if (shows === 'no-figure') return noFigure
  const [inside, outside] = [numberFrom(inner ?? ''), numberFrom(outer ?? '')]
  if (!isUnit(shows) || inside === null || outside === null) return null
  return `${inside} ${shows} left inside, ${outside} ${shows} outside`
}
