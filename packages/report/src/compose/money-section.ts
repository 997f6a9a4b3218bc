import { newestBundles } from '@bayledger/ledger/questions/answers'
import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import {
  bundleMoney,
  dueCents,
  lookOwedCents,
  owedCents,
  paidCents,
  payment,
} from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { OrderState } from '@bayledger/ledger/state'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import type { Block, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { gap, words } from './figures.ts'
import { authorName } from './people.ts'
import { sumWords } from './price-line.ts'

const { money: says, cells } = english.report

/** Each line of what the customer said Yes to with its price, and each payment. */
export const moneySection = (state: OrderState, context: ReportContext): Section => {
  const { money } = context
  const totals = says.totals(
    sumWords(dueCents(state, money)),
    sumWords(paidCents(state, money)),
    sumWords(owedCents(state, money)),
  )
  return {
    title: says.title,
    blocks: [paragraph(totals), priceTable(state, context), paymentTable(state, context)],
  }
}

const priceTable = (state: OrderState, { money }: ReportContext): Block => {
  const rows = authorizedBundles(state).flatMap((bundle): Row[] => {
    const title = words(bundleTitle(english, namedBundle(bundle)))
    const priced = bundleMoney(money, bundle.money)
    const entry = state.answers[bundle.bundleKey]?.written.seq ?? null
    if (!priced) return [{ entry, cells: [title, gap(cells.erased), gap(cells.erased)] }]
    return [
      ...priced.lines.map((line) => ({
        entry,
        cells: [title, words(lineWords(english.estimateLines, line)), words(sumWords(line.amountCents))],
      })),
      { entry, cells: [title, words(says.tax), words(sumWords(priced.totals.taxCents))] },
      { entry, cells: [title, words(says.total), words(sumWords(priced.totals.totalCents))] },
    ]
  })
  const look = lookOwedCents(state, money)
  if (look !== 0)
    rows.push({
      entry: state.authority.look?.written.seq ?? null,
      cells: [words(says.look.work), words(says.look.line), words(sumWords(look))],
    })
  if (rows.length === 0)
    return paragraph(
      newestBundles(state).length === 0 ? says.noEstimate : says.nothingAuthorized,
      state.estimates.at(-1)?.written.seq ?? null,
    )
  return table(says.prices, { work: 34, line: 48, price: 18 }, rows)
}

const paymentTable = (state: OrderState, context: ReportContext): Block =>
  state.payments.length === 0
    ? paragraph(says.noPayment)
    : table(
        says.payments,
        { how: 20, amount: 20, by: 60 },
        state.payments.map(({ money, method, written }) => ({
          entry: written.seq,
          cells: [
            words(says.methods[method]),
            words(sumWords(payment(context.money, money)?.amountCents)),
            words(`${authorName(context, written.by)}, ${writtenMoment(context, written)}`),
          ],
        })),
      )
