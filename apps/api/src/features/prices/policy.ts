import type { FieldProblem } from '@bayledger/contract/problem'
import type { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import { doubtWords } from '../../words/doubt-words.ts'

/** Percent. No place taxes sales higher (from memory, no source); dollars an hour that shops ask (the trade's expectation, no source). */
const usual = { taxPercent: 15, laborDollars: { low: 20, high: 500 } }

/** What of the prices may be right and is likely a slip. */
export const doubtsOf = ({
  taxRatePercentThousandths,
  laborCentsPerHour,
}: PriceBookContent): FieldProblem[] => {
  const { low, high } = usual.laborDollars
  return [
    ...(taxRatePercentThousandths > usual.taxPercent * 1_000
      ? [
          {
            field: 'taxRatePercentThousandths',
            found: `${taxRatePercentThousandths / 1_000} %`,
            allowed: doubtWords.tax(usual.taxPercent),
          },
        ]
      : []),
    ...(laborCentsPerHour < low * 100 || laborCentsPerHour > high * 100
      ? [
          {
            field: 'laborCentsPerHour',
            found: (laborCentsPerHour / 100).toFixed(2),
            allowed: doubtWords.laborRate(low, high),
          },
        ]
      : []),
  ]
}
