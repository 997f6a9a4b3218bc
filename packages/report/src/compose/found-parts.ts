import { type Danger, dangersOf } from '@bayledger/ledger/questions/dangers'
import { isSettledByWork } from '@bayledger/ledger/questions/finding-holds'
import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import { type LowWheel, lowAsLeft, lowOnArrival } from '@bayledger/ledger/questions/low-wheels'
import { bundleTotals } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { severityOf } from '@bayledger/ledger/questions/severity'
import type { IssuedBundle, IssuedDiagnosis, OrderState } from '@bayledger/ledger/state'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { bundleTitle } from '@bayledger/wording/bundles'
import { uncapitalized } from '@bayledger/wording/capitalized'
import type { LowTire } from '@bayledger/wording/report/found'
import { wheelList } from '@bayledger/wording/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import type { FoundPart } from '../content.ts'
import { personalText, type ReportContext } from './context.ts'
import { isDone } from './done-bundles.ts'
import { dollars, labelPressure, number } from './figures.ts'
import { proofOfFinding } from './proof-figure.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.found

/** What page one says was found: each danger, the cause of the light, and what was left as it is. */
export const foundParts = (state: OrderState, context: ReportContext): readonly FoundPart[] => {
  const issued = state.diagnosis
  if (!issued)
    return [
      plainPart('not-checked', context.language.severities['not-checked'], says(context).notIssued, [], null),
    ]
  const dangers = dangersOf(state).map((danger) => dangerPart(danger, issued, context))
  return [...dangers, lightPart(state, issued, context), ...leftPart(state, context, issued)]
}

const plainPart = (
  severity: FoundPart['severity'],
  word: string,
  sentence: string,
  remedy: readonly string[],
  entry: number | null,
): FoundPart => ({ severity, word, sentence, proof: null, remedy, entry })

const dangerPart = (
  danger: Danger,
  { diagnosis, written }: IssuedDiagnosis,
  context: ReportContext,
): FoundPart => {
  const { finding } = danger
  if (!danger.isOpen)
    return plainPart(
      'for-information',
      says(context).settled,
      `${findingName(context, finding)}.`,
      [],
      written.seq,
    )
  if (danger.isOffTheRoad)
    return plainPart(
      'for-information',
      says(context).onTheSpare,
      `${findingName(context, finding)}.`,
      remedyLines(danger, context),
      written.seq,
    )
  const severity = severityOf(finding, diagnosis.primary)
  return {
    severity,
    word: context.language.severities[severity],
    sentence: sentenceFor(context.language, finding),
    proof: proofOfFinding(context, finding),
    remedy: remedyLines(danger, context),
    entry: written.seq,
  }
}

/** "Tire unsafe, left front". */
export const findingName = (context: Spoken, { code, wheels }: Finding): string =>
  `${context.language.findingTitles[code]}${wheels.length === 0 ? '' : `, ${wheelList(context.language.wheels, wheels)}`}`

/** What removes a danger comes before everything else, with its price, or that it has none yet. */
export const remedyLines = (
  { finding, remedies }: Danger,
  context: Pick<ReportContext, 'language' | 'money'>,
): string[] => {
  if (remedies.length === 0)
    // What only we must open with care asks nothing of the customer.
    return finding.stop === 'do-not-open-the-tire' && finding.offers.every((offer) => offer !== 'tire')
      ? []
      : [says(context).removesUnpriced(unpriced(context, finding))]
  return remedies.map(({ bundle, decision }) =>
    says(context).removes(offerWords(bundle, context), decision?.answer ?? null),
  )
}

/** The work that a finding offers, where no estimate names it. */
const unpriced = (context: Spoken, { offers, wheels }: Finding): string | null => {
  const title = (['tire', 'stem'] as const).find((one) => offers.includes(one))
  if (title === undefined) return null
  return uncapitalized(bundleTitle(context.language, { title, wheels, asWritten: null }))
}

/** "new tire, left front, $214.50 with tax" */
const offerWords = (bundle: IssuedBundle, context: Pick<ReportContext, 'language' | 'money'>): string => {
  const cents = bundleTotals(context.money, bundle)?.totalCents ?? null
  const work = uncapitalized(bundleTitle(context.language, namedBundle(bundle)))
  return says(context).offer(work, cents === null ? null : dollars(cents))
}

/** The technician's own finding where they disagreed; else the cause of the light, or why there is none to name. */
const lightPart = (state: OrderState, issued: IssuedDiagnosis, context: ReportContext): FoundPart => {
  const { confirmed, diagnosis, written } = issued
  if (confirmed?.agrees === false)
    return plainPart(
      'cause',
      context.language.severities.cause,
      says(context).ownFinding(confirmed.ownFinding, personalText(context, confirmed.reason)),
      [],
      confirmed.written.seq,
    )
  const cause = diagnosis.findings.find(({ code }) => code === diagnosis.primary)
  const also = alsoLow(state, context, cause ?? null)
  if (!cause)
    return plainPart(
      'for-information',
      says(context).theLight,
      withoutCause(state, context),
      also,
      written.seq,
    )
  if (cause.kind === 'stop')
    return plainPart(
      'cause',
      says(context).causeOfTheLight,
      says(context).dangerExplainsIt,
      also,
      written.seq,
    )
  const severity = severityOf(cause, diagnosis.primary)
  return {
    severity,
    word: severity === 'cause' ? says(context).causeOfTheLight : context.language.severities[severity],
    sentence: sentenceFor(context.language, cause),
    proof: proofOfFinding(context, cause),
    remedy: [...doneAbout(state, context, cause), ...also],
    entry: written.seq,
  }
}

const withoutCause = (state: OrderState, context: Spoken): string => {
  const seen = state.arrival.telltale?.behavior ?? null
  if (seen === null) return says(context).noCause['nobody-looked']
  return says(context).noCause[seen === 'off' ? 'was-off' : 'unexplained']
}

/** The sentence that joins the cause and what was done about it. */
const doneAbout = (state: OrderState, context: Spoken, cause: Finding): string[] => {
  const agreed = authorizedBundles(state).filter(({ findings }) => findings.includes(cause.code))
  const titles = (bundles: readonly IssuedBundle[]) =>
    bundles.map((bundle) => uncapitalized(bundleTitle(context.language, namedBundle(bundle))))
  const done = agreed.filter((bundle) => isDone(state, bundle))
  if (done.length > 0) return [says(context).done(titles(done))]
  return [agreed.length > 0 ? says(context).agreed(titles(agreed)) : says(context).nothingDone]
}

/** Tires that came in low beside those of the cause: the spare, and any that a finding names for more than information. */
const alsoLow = (state: OrderState, context: Spoken, cause: Finding | null): string[] => {
  const left = new Set(lowAsLeft(state).map(({ wheel }) => wheel))
  const found = (state.diagnosis?.diagnosis.findings ?? []).filter(({ kind }) => kind !== 'note')
  const low = lowOnArrival(state)
    .filter(({ wheel }) => !left.has(wheel) && !cause?.wheels.includes(wheel))
    .filter(({ wheel }) => wheel === 'SP' || found.some(({ wheels }) => wheels.includes(wheel)))
  return low.length === 0 ? [] : [says(context).alsoLow(lowTires(context, low))]
}

/** What was left as it is: tires that are low, and holes that were seen and into which nobody looked. */
const leftPart = (state: OrderState, context: Spoken, { diagnosis }: IssuedDiagnosis): FoundPart[] => {
  const low = lowAsLeft(state)
  const hole = diagnosis.findings.find(({ code }) => code === 'puncture-found')
  const left = [
    ...(low.length === 0 ? [] : [says(context).left.onTheLabel(lowTires(context, low))]),
    ...(hole === undefined || isSettledByWork(state, hole)
      ? []
      : [uncapitalized(findingName(context, hole))]),
  ]
  if (left.length === 0) return []
  const word = low.length === 0 ? says(context).left.word : says(context).left.low
  return [plainPart('also-found', word, `${left.join('; ')}.`, [], null)]
}

const lowTires = (context: Spoken, low: readonly LowWheel[]): LowTire[] =>
  low.map(({ wheel, psi, label }) => ({
    wheel: context.language.wheels.names[wheel],
    psi: number(psi, 'psi'),
    label: labelPressure(label).value,
  }))
