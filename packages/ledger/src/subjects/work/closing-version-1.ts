import type { BalanceLeft } from '@bayledger/reckoning/wheel/balance-left'

/** What closed a step in the first version, where what balancing left was written in words. */
type InWords = { readonly stepKey: string; readonly value: string | null }
type InFigures = { readonly stepKey: string; readonly value: string | BalanceLeft | null }

/** The words that the bay's form wrote are read as the figures that they were; any others stay words. */
export const closingToVersion2 = ({ stepKey, value }: InWords): InFigures => ({
  stepKey,
  value: value === null ? null : (leftAsWritten(value) ?? value),
})

const leftAsWritten = (words: string): BalanceLeft | null => {
  if (words === 'the machine shows no figure') return { shows: 'no-figure' }
  if (words === '0 oz left, inner and outer') return figures('oz', 0, 0)
  const [, inner, unit, outer] = bothSides.exec(words) ?? []
  return unit === 'oz' || unit === 'g' ? figures(unit, Number(inner), Number(outer)) : null
}

const bothSides = /^(\d+(?:\.\d+)?) (oz|g) left inside, (\d+(?:\.\d+)?) \2 outside$/

const figures = (unit: 'oz' | 'g', inner: number, outer: number): BalanceLeft => ({
  shows: 'figures',
  unit,
  inner,
  outer,
  balancedAgain: false,
})
