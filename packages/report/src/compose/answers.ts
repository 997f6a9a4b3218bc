import { answerTo, isLook } from '@bayledger/ledger/questions/answers'
import { bundleTotals, estimateMoney } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { BundleDecision, OrderState } from '@bayledger/ledger/state'
import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import { bundleTitle } from '@bayledger/wording/bundles'
import { cautionName, cautionWords } from '@bayledger/wording/customer-cautions'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import type { Block, Cell, PageOne, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { personalText, type ReportContext, writtenMoment } from './context.ts'
import { dayWords, words } from './figures.ts'
import { findingName } from './found-parts.ts'
import { authorName } from './people.ts'
import { sumWords } from './price-line.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.answers

export type NotDoneLine = {
  readonly title: string
  readonly answer: string
  readonly entry: number | null
  readonly caution: Cell
  /** Cents with tax; `null` where it was erased. */
  readonly totalCents: number | null
}

/** Every bundle of the newest estimate that was not authorized, with the answer and the caution that was shown. */
export const notDoneLines = (state: OrderState, context: ReportContext): NotDoneLine[] =>
  (state.estimates.at(-1)?.scope.bundles ?? []).flatMap((bundle) => {
    const decision = answerTo(state, bundle)
    if (decision?.answer === 'authorized' || isLook(bundle) || isConditional(bundle)) return []
    const shown = decision?.cautionsShown ?? []
    return [
      {
        title: bundleTitle(context.language, namedBundle(bundle)),
        answer: answerWords(context, decision),
        entry: decision?.written.seq ?? null,
        caution: words(
          shown.length === 0
            ? says(context).noCaution
            : shown.map((caution) => cautionText(context, caution)).join(' '),
        ),
        totalCents: bundleTotals(context.money, bundle)?.totalCents ?? null,
      },
    ]
  })

/** The same on page one, with prices, and each refusal of safety work with its proof. */
export const notDoneOnPageOne = (state: OrderState, context: ReportContext): PageOne['notDone'] => [
  ...Object.entries(state.refusals).map(([code, refusal]) => ({
    answer: says(context).refused.caption,
    title: `${refusedName(state, context, code)}. ${proofAndLeaving(context, refusal)}`,
  })),
  ...notDoneLines(state, context).map(({ title, answer, totalCents }) => ({
    answer,
    title: `${title}, ${sumWords(context, totalCents)}`,
  })),
]

const refusedName = (state: OrderState, context: Spoken, code: string): string => {
  const found = state.diagnosis?.diagnosis.findings.find((finding) => finding.code === code)
  return found ? findingName(context, found) : titleOf(context, code)
}

/** A finding that is no longer among the findings has its title; an unknown code stands for itself. */
const titleOf = (context: Spoken, code: string): string =>
  Object.hasOwn(context.language.findingTitles, code)
    ? context.language.findingTitles[code as FindingCode]
    : code

/** How the refusal is proven, and how the vehicle leaves, as the customer chose. */
const proofAndLeaving = (
  context: ReportContext,
  { proof, leaves }: Pick<OrderState['refusals'][string], 'proof' | 'leaves'>,
): string => {
  const proven =
    proof.kind === 'signed'
      ? says(context).signed
      : says(context).witnessed(context.staff[proof.witness.staffId] ?? null)
  return leaves === null ? proven : `${proven} ${says(context).leaves[leaves]}`
}

const answerWords = (context: Spoken, decision: BundleDecision | null): string => {
  if (!decision) return says(context).answer({ answer: 'none' })
  if (decision.takesBack) return says(context).answer({ answer: 'taken-back' })
  if (decision.answer === 'declined') return says(context).answer({ answer: 'declined' })
  const until = decision.deferredUntil ? dayWords(context, decision.deferredUntil) : null
  return says(context).answer({ answer: 'deferred', until })
}

/** A caution's number with its words; the number alone would mean nothing to a reader. */
const cautionText = (context: Spoken, caution: CautionReference): string => {
  const text = cautionWords(context.language.customerCautions, caution)
  return text ? `${cautionName(caution)}: ${text}` : cautionName(caution)
}

/** What was declined or deferred, every consent, and every refusal of safety work. */
export const answersSection = (state: OrderState, context: ReportContext): Section => {
  const open = notDoneLines(state, context)
  const blocks: Block[] = [
    open.length === 0
      ? paragraph(says(context).nothingOpen)
      : table(
          says(context).open,
          { proposal: 30, price: 13, answer: 20, caution: 37 },
          open.map((line) => ({
            entry: line.entry,
            cells: [
              words(line.title),
              words(sumWords(context, line.totalCents)),
              words(line.answer),
              line.caution,
            ],
          })),
        ),
    ...consents(state, context),
    ...refusals(state, context),
  ]
  return { title: says(context).title, blocks }
}

const consents = (state: OrderState, context: ReportContext): Block[] =>
  state.decisions.length === 0
    ? []
    : [
        table(
          says(context).consents,
          { estimate: 16, by: 32, how: 20, when: 32 },
          state.decisions.map(
            (decision): Row => ({
              entry: decision.written.seq,
              cells: [
                words(says(context).version(decision.revision, totalOf(state, context, decision.revision))),
                words(
                  `${personalText(context, decision.by.name)}, ${says(context).relations[decision.by.relation]}`,
                ),
                words(says(context).channels[decision.consent.channel]),
                words(writtenMoment(context, decision.written)),
              ],
            }),
          ),
        ),
      ]

const totalOf = (state: OrderState, context: ReportContext, revision: number): string | null => {
  const issued = state.estimates.find(({ scope }) => scope.revision === revision)
  return issued
    ? sumWords(context, estimateMoney(context.money, issued.scope.money)?.totals.totalCents)
    : null
}

const refusals = (state: OrderState, context: ReportContext): Block[] => {
  const rows = Object.entries(state.refusals).map(
    ([code, refusal]): Row => ({
      entry: refusal.written.seq,
      cells: [
        words(findingSentence(state, context, code)),
        words(proofAndLeaving(context, refusal)),
        words(cautionText(context, refusal.cautionShown)),
        words(`${authorName(context, refusal.written.by)}, ${writtenMoment(context, refusal.written)}`),
      ],
    }),
  )
  return rows.length === 0
    ? []
    : [table(says(context).refused, { finding: 34, proof: 20, caution: 26, by: 20 }, rows)]
}

const findingSentence = (state: OrderState, context: Spoken, code: string): string => {
  const found = state.diagnosis?.diagnosis.findings.find((finding) => finding.code === code)
  return found ? sentenceFor(context.language, found) : titleOf(context, code)
}
