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
import { type ReportContext, writtenMoment } from './context.ts'
import { gap, words } from './figures.ts'
import { authorName } from './people.ts'
import { sumWords } from './price-line.ts'

/** Each line of what the customer said Yes to with its price, and each payment. */
export const moneySection = (state: OrderState, context: ReportContext): Section => {
  const { money } = context
  const totals = `Price with tax: ${sumWords(dueCents(state, money))}. Paid: ${sumWords(paidCents(state, money))}. Open: ${sumWords(owedCents(state, money))}.`
  return {
    title: 'Price and payments',
    blocks: [
      { kind: 'paragraph', text: totals, entry: null },
      ...priceTable(state, context),
      ...paymentTable(state, context),
    ],
  }
}

const priceTable = (state: OrderState, { money }: ReportContext): Block[] => {
  const rows = authorizedBundles(state).flatMap((bundle): Row[] => {
    const title = words(bundleTitle(english, namedBundle(bundle)))
    const priced = bundleMoney(money, bundle.money)
    const entry = state.answers[bundle.bundleKey]?.written.seq ?? null
    if (!priced) return [{ entry, cells: [title, gap('erased on request'), gap('erased on request')] }]
    return [
      ...priced.lines.map((line) => ({
        entry,
        cells: [title, words(lineWords(english.estimateLines, line)), words(sumWords(line.amountCents))],
      })),
      { entry, cells: [title, words('Tax'), words(sumWords(priced.totals.taxCents))] },
      { entry, cells: [title, words('Total with tax'), words(sumWords(priced.totals.totalCents))] },
    ]
  })
  const look = lookOwedCents(state, money)
  if (look !== 0)
    rows.push({
      entry: state.authority.look?.written.seq ?? null,
      cells: [words('Inspection'), words('as agreed before it began, with tax'), words(sumWords(look))],
    })
  if (rows.length === 0)
    return [
      {
        kind: 'paragraph',
        text:
          newestBundles(state).length === 0
            ? 'No estimate was made.'
            : 'Nothing on the estimate was authorized.',
        entry: state.estimates.at(-1)?.written.seq ?? null,
      },
    ]
  return [
    {
      kind: 'table',
      caption: 'What you said Yes to',
      columns: [
        { title: 'Work', share: 34 },
        { title: 'Line', share: 48 },
        { title: 'Price', share: 18 },
      ],
      rows,
    },
  ]
}

const methods = {
  cash: 'cash',
  card: 'card',
  check: 'check',
  account: 'on account',
  'none-due': 'nothing due',
} as const

const paymentTable = (state: OrderState, context: ReportContext): Block[] =>
  state.payments.length === 0
    ? [{ kind: 'paragraph', text: 'No payment was noted before this report.', entry: null }]
    : [
        {
          kind: 'table',
          caption: 'Payments',
          columns: [
            { title: 'How', share: 20 },
            { title: 'Amount', share: 20 },
            { title: 'Noted by', share: 60 },
          ],
          rows: state.payments.map(({ money, method, written }) => ({
            entry: written.seq,
            cells: [
              words(methods[method]),
              words(sumWords(payment(context.money, money)?.amountCents)),
              words(`${authorName(context, written.by)}, ${writtenMoment(context, written)}`),
            ],
          })),
        },
      ]
