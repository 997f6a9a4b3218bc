import { authorizedBundles } from '@bayledger/ledger/questions/answers'
import { bundleMoney, lookOwedCents, type MoneySides } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { OrderState } from '@bayledger/ledger/state'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { coverSentence } from '@bayledger/wording/line-covers'
import type { RowOf } from '../../../core/csv/csv-table.ts'
import type { saleColumns } from './export-columns.ts'

type Sale = Omit<RowOf<typeof saleColumns>, 'order' | 'place' | 'at'>

const sum = (sold: string, line: string, kind: string, amount: number | null): Sale => ({
  sold,
  line,
  kind,
  amount,
  wheels: '',
  tax_class: '',
  quantity: null,
  unit_price: null,
  would_cost: null,
  warranty: '',
})

/**
 * What an order sold: each line that the customer said Yes to, the tax of each bundle, and the inspection where no bundle holds
 * it. The amounts add up to what was due; what was withheld or erased has none. A line of a comeback says whether the warranty covers
 * it, and what it would cost where the warranty changes its price.
 */
export const salesOf = (state: OrderState, money: MoneySides): Sale[] => {
  const bundles = authorizedBundles(state).filter((bundle) => !isConditional(bundle))
  const look = lookOwedCents(state, money)
  const { work, line } = english.report.money.look
  return [
    ...bundles.flatMap((bundle): Sale[] => {
      const sold = bundleTitle(english, namedBundle(bundle))
      const priced = bundleMoney(money, bundle.money)
      if (!priced) return [sum(sold, english.report.cells.erased, 'erased', null)]
      return [
        ...priced.lines.map((one) => ({
          sold,
          line: lineWords(english.estimateLines, one),
          wheels: one.wheels.join(';'),
          kind: one.kind,
          tax_class: one.taxClass,
          quantity: one.quantityHundredths / 100,
          unit_price: one.unitCents,
          amount: one.amountCents,
          would_cost: one.cover?.listCents ?? null,
          warranty: coverSentence(english.lineCovers, one, bundle.covers) ?? '',
        })),
        sum(sold, english.report.money.tax, 'tax', priced.totals.taxCents),
      ]
    }),
    ...(look === 0 ? [] : [sum(work, line, 'look', look)]),
  ]
}
