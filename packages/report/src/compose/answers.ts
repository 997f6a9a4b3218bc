import { answerTo, isLook } from '@bayledger/ledger/questions/answers'
import { bundleTotals, estimateMoney } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { BundleDecision, OrderState } from '@bayledger/ledger/state'
import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import { bundleTitle } from '@bayledger/wording/bundles'
import { cautionName, cautionWords } from '@bayledger/wording/customer-cautions'
import { english } from '@bayledger/wording/en/english'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import type { Block, Cell, PageOne, Row, Section } from '../content.ts'
import { personalText, type ReportContext, writtenMoment } from './context.ts'
import { dayWords, sentence, words } from './figures.ts'
import { findingName } from './found-parts.ts'
import { authorName } from './people.ts'
import { sumWords } from './price-line.ts'

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
    if (decision?.answer === 'authorized' || isLook(bundle)) return []
    const shown = decision?.cautionsShown ?? []
    return [
      {
        title: bundleTitle(english, namedBundle(bundle)),
        answer: answerWords(decision),
        entry: decision?.written.seq ?? null,
        caution: words(shown.length === 0 ? 'none shown' : shown.map(cautionText).join(' ')),
        totalCents: bundleTotals(context.money, bundle)?.totalCents ?? null,
      },
    ]
  })

/** The same on page one, with prices, and each refusal of safety work with its proof. */
export const notDoneOnPageOne = (state: OrderState, context: ReportContext): PageOne['notDone'] => [
  ...Object.entries(state.refusals).map(([code, { proof, leaves }]) => ({
    answer: 'Refused although unsafe',
    title: `${refusedName(state, code)}. ${refusalProof(context, proof)}${leaves === null ? '' : ` ${leaving[leaves]}`}`,
  })),
  ...notDoneLines(state, context).map(({ title, answer, totalCents }) => ({
    answer,
    title: `${title}, ${sumWords(totalCents)}`,
  })),
]

const refusedName = (state: OrderState, code: string): string => {
  const found = state.diagnosis?.diagnosis.findings.find((finding) => finding.code === code)
  return found ? findingName(found) : sentence(code.replaceAll('-', ' '))
}

/** How the vehicle leaves, as the customer chose. */
const leaving = {
  towed: 'It is towed.',
  'sound-spare': 'It leaves on its spare.',
  'as-it-is': 'It leaves as it is.',
} as const

const refusalProof = (context: ReportContext, proof: OrderState['refusals'][string]['proof']): string =>
  proof.kind === 'signed'
    ? 'Signed by the customer.'
    : `Refused to sign; witness: ${context.staff[proof.witness.staffId] ?? 'name not on file'}.`

const answerWords = (decision: BundleDecision | null): string => {
  if (!decision) return 'Not answered'
  if (decision.takesBack) return 'No, after a Yes that was taken back before any work on it'
  if (decision.answer === 'declined') return 'No'
  return decision.deferredUntil ? `Later, until ${dayWords(decision.deferredUntil)}` : 'Later'
}

/** A caution's number with its words; the number alone would mean nothing to a reader. */
const cautionText = (caution: CautionReference): string => {
  const text = cautionWords(english.customerCautions, caution)
  return text ? `${cautionName(caution)}: ${text}` : cautionName(caution)
}

/** What was declined or deferred, every consent, and every refusal of safety work. */
export const answersSection = (state: OrderState, context: ReportContext): Section => {
  const open = notDoneLines(state, context)
  const blocks: Block[] = [
    open.length === 0
      ? { kind: 'paragraph', text: 'Nothing was answered with No or Later.', entry: null }
      : {
          kind: 'table',
          caption: 'Declined and deferred',
          columns: [
            { title: 'Proposal', share: 30 },
            { title: 'Price', share: 13 },
            { title: 'Answer', share: 20 },
            { title: 'Caution shown', share: 37 },
          ],
          rows: open.map((line) => ({
            entry: line.entry,
            cells: [words(line.title), words(sumWords(line.totalCents)), words(line.answer), line.caution],
          })),
        },
    ...consents(state, context),
    ...refusals(state, context),
  ]
  return { title: 'Your answers', blocks }
}

const channels = { 'in-person': 'at the desk', link: 'by link', telephone: 'by telephone' } as const
const relations = {
  owner: 'owner',
  'named-person': 'person named by the owner',
  'fleet-contact': 'fleet contact',
  driver: 'driver',
} as const

const consents = (state: OrderState, context: ReportContext): Block[] =>
  state.decisions.length === 0
    ? []
    : [
        {
          kind: 'table',
          caption: 'Consents',
          columns: [
            { title: 'Estimate', share: 16 },
            { title: 'Answered by', share: 32 },
            { title: 'How', share: 20 },
            { title: 'When', share: 32 },
          ],
          rows: state.decisions.map(
            (decision): Row => ({
              entry: decision.written.seq,
              cells: [
                words(`version ${decision.revision}, ${totalOf(state, context, decision.revision)}`),
                words(`${personalText(context, decision.by.name)}, ${relations[decision.by.relation]}`),
                words(channels[decision.consent.channel]),
                words(writtenMoment(context, decision.written)),
              ],
            }),
          ),
        },
      ]

const totalOf = (state: OrderState, context: ReportContext, revision: number): string => {
  const issued = state.estimates.find(({ scope }) => scope.revision === revision)
  return issued
    ? sumWords(estimateMoney(context.money, issued.scope.money)?.totals.totalCents)
    : 'total not on file'
}

const refusals = (state: OrderState, context: ReportContext): Block[] => {
  const rows = Object.entries(state.refusals).map(
    ([code, refusal]): Row => ({
      entry: refusal.written.seq,
      cells: [
        words(findingSentence(state, code)),
        words(
          `${refusalProof(context, refusal.proof)}${refusal.leaves === null ? '' : ` ${leaving[refusal.leaves]}`}`,
        ),
        words(cautionText(refusal.cautionShown)),
        words(`${authorName(context, refusal.written.by)}, ${writtenMoment(context, refusal.written)}`),
      ],
    }),
  )
  return rows.length === 0
    ? []
    : [
        {
          kind: 'table',
          caption: 'Refused although unsafe',
          columns: [
            { title: 'Finding', share: 34 },
            { title: 'Proof', share: 20 },
            { title: 'Caution shown', share: 26 },
            { title: 'Told by', share: 20 },
          ],
          rows,
        },
      ]
}

const findingSentence = (state: OrderState, code: string): string => {
  const found = state.diagnosis?.diagnosis.findings.find((finding) => finding.code === code)
  return found ? sentenceFor(english, found) : code.replaceAll('-', ' ')
}
