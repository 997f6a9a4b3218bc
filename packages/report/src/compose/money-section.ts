import { newestBundles } from '@bayledger/ledger/questions/answers'
import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import {
  bundleMoney,
  dueCents,
  estimateMoney,
  lookOwedCents,
  neverPaidCents,
  paidCents,
  payment,
} from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { OrderState } from '@bayledger/ledger/state'
import type { EstimateLine } from '@bayledger/reckoning/estimate'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import type { LineCover } from '@bayledger/reckoning/money/line-cover'
import { bundleTitle } from '@bayledger/wording/bundles'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { coverSentence } from '@bayledger/wording/line-covers'
import type { Block, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { personalText, type ReportContext, writtenMoment } from './context.ts'
import { gap, words } from './figures.ts'
import { authorName } from './people.ts'
import { backWords, sumWords } from './price-line.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.money
const cells = ({ language }: Spoken) => language.report.cells

/** Each line of what the customer said Yes to with its price, and each payment. */
export const moneySection = (state: OrderState, context: ReportContext): Section => {
  const { money } = context
  const totals = says(context).totals(
    sumWords(context, dueCents(state, money)),
    sumWords(context, paidCents(state, money)),
    sumWords(context, neverPaidCents(state, money)),
    backWords(state, context),
  )
  return {
    title: says(context).title,
    blocks: [
      paragraph(totals),
      ...exemption(state, context),
      priceTable(state, context),
      paymentTable(state, context),
    ],
  }
}

/** By which certificate the customer pays no tax. */
const exemption = (state: OrderState, context: ReportContext): Block[] => {
  const newest = state.estimates.at(-1)
  const certificate = newest && estimateMoney(context.money, newest.scope.money)?.exemption
  return certificate ? [paragraph(says(context).exempt(certificate), newest.written.seq)] : []
}

const priceTable = (state: OrderState, context: ReportContext): Block => {
  const { money } = context
  const owed = authorizedBundles(state).filter((bundle) => !isConditional(bundle))
  const rows = owed.flatMap((bundle): Row[] => {
    const title = words(bundleTitle(context.language, namedBundle(bundle)))
    const priced = bundleMoney(money, bundle.money)
    const entry = state.answers[bundle.bundleKey]?.written.seq ?? null
    if (!priced) return [{ entry, cells: [title, gap(cells(context).erased), gap(cells(context).erased)] }]
    return [
      ...priced.lines.map((line) => ({
        entry,
        cells: [
          title,
          words(lineOf(context, line, bundle.covers)),
          words(sumWords(context, line.amountCents)),
        ],
      })),
      { entry, cells: [title, words(says(context).tax), words(sumWords(context, priced.totals.taxCents))] },
      {
        entry,
        cells: [title, words(says(context).total), words(sumWords(context, priced.totals.totalCents))],
      },
    ]
  })
  const look = lookOwedCents(state, money)
  if (look !== 0)
    rows.push({
      entry: state.authority.look?.written.seq ?? null,
      cells: [words(says(context).look.work), words(says(context).look.line), words(sumWords(context, look))],
    })
  if (rows.length === 0)
    return paragraph(
      newestBundles(state).length === 0 ? says(context).noEstimate : says(context).nothingAuthorized,
      state.estimates.at(-1)?.written.seq ?? null,
    )
  return table(says(context).prices, { work: 34, line: 48, price: 18 }, rows)
}

/** A line's name, and on a comeback what the warranty says of it. */
const lineOf = (
  { language }: ReportContext,
  line: EstimateLine,
  covers: readonly LineCover[] | undefined,
): string => {
  const cover = coverSentence(language.lineCovers, line, covers)
  const name = lineWords(language.estimateLines, line)
  return cover === null ? name : `${name}. ${cover}`
}

const paymentTable = (state: OrderState, context: ReportContext): Block =>
  state.payments.length === 0
    ? paragraph(says(context).noPayment)
    : table(
        says(context).payments,
        { how: 34, amount: 18, by: 48 },
        state.payments.map(({ money, method, back, written }) => ({
          entry: written.seq,
          cells: [
            words(
              back
                ? says(context).givenBack(says(context).methods[method], personalText(context, back.why))
                : says(context).methods[method],
            ),
            words(sumWords(context, payment(context.money, money)?.amountCents)),
            words(`${authorName(context, written.by)}, ${writtenMoment(context, written)}`),
          ],
        })),
      )
