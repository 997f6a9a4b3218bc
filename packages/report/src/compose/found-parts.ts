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
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { LowTire } from '@bayledger/wording/report/found'
import { wheelList } from '@bayledger/wording/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import type { FoundPart } from '../content.ts'
import { personalText, type ReportContext } from './context.ts'
import { isDone } from './done-bundles.ts'
import { dollars, labelPressure, number } from './figures.ts'
import { proofOfFinding } from './proof-figure.ts'

const { found: says } = english.report

/** What page one says was found: each danger, the cause of the light, and what was left as it is. */
export const foundParts = (state: OrderState, context: ReportContext): readonly FoundPart[] => {
  const issued = state.diagnosis
  if (!issued) return [plainPart('not-checked', english.severities['not-checked'], says.notIssued, [], null)]
  const dangers = dangersOf(state).map((danger) => dangerPart(danger, issued, context))
  return [...dangers, lightPart(state, issued, context), ...leftPart(state, issued)]
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
    return plainPart('for-information', says.settled, `${findingName(finding)}.`, [], written.seq)
  if (danger.isOffTheRoad)
    return plainPart(
      'for-information',
      says.onTheSpare,
      `${findingName(finding)}.`,
      remedyLines(danger, context),
      written.seq,
    )
  const severity = severityOf(finding, diagnosis.primary)
  return {
    severity,
    word: english.severities[severity],
    sentence: sentenceFor(english, finding),
    proof: proofOfFinding(finding),
    remedy: remedyLines(danger, context),
    entry: written.seq,
  }
}

/** "Tire unsafe, left front". */
export const findingName = ({ code, wheels }: Finding): string =>
  `${english.findingTitles[code]}${wheels.length === 0 ? '' : `, ${wheelList(english.wheels, wheels)}`}`

/** What removes a danger comes before everything else, with its price, or that it has none yet. */
export const remedyLines = (
  { finding, remedies }: Danger,
  context: Pick<ReportContext, 'money'>,
): string[] => {
  if (remedies.length === 0) return [says.removesUnpriced(unpriced(finding))]
  return remedies.map(({ bundle, decision }) =>
    says.removes(offerWords(bundle, context), decision?.answer ?? null),
  )
}

/** The work that a finding offers, where no estimate names it. */
const unpriced = ({ offers, wheels }: Finding): string | null => {
  const title = (['tire', 'stem'] as const).find((one) => offers.includes(one))
  if (title === undefined) return null
  return uncapitalized(bundleTitle(english, { title, wheels, asWritten: null }))
}

/** "new tire, left front, $214.50 with tax" */
const offerWords = (bundle: IssuedBundle, { money }: Pick<ReportContext, 'money'>): string => {
  const cents = bundleTotals(money, bundle)?.totalCents ?? null
  const work = uncapitalized(bundleTitle(english, namedBundle(bundle)))
  return says.offer(work, cents === null ? null : dollars(cents))
}

/** The technician's own finding where they disagreed; else the cause of the light, or why there is none to name. */
const lightPart = (state: OrderState, issued: IssuedDiagnosis, context: ReportContext): FoundPart => {
  const { confirmed, diagnosis, written } = issued
  if (confirmed?.agrees === false)
    return plainPart(
      'cause',
      english.severities.cause,
      says.ownFinding(confirmed.ownFinding, personalText(context, confirmed.reason)),
      [],
      confirmed.written.seq,
    )
  const cause = diagnosis.findings.find(({ code }) => code === diagnosis.primary)
  const also = alsoLow(state, cause ?? null)
  if (!cause) return plainPart('for-information', says.theLight, withoutCause(state), also, written.seq)
  if (cause.kind === 'stop')
    return plainPart('cause', says.causeOfTheLight, says.dangerExplainsIt, also, written.seq)
  const severity = severityOf(cause, diagnosis.primary)
  return {
    severity,
    word: severity === 'cause' ? says.causeOfTheLight : english.severities[severity],
    sentence: sentenceFor(english, cause),
    proof: proofOfFinding(cause),
    remedy: [...doneAbout(state, cause), ...also],
    entry: written.seq,
  }
}

const withoutCause = (state: OrderState): string => {
  const seen = state.arrival.telltale?.behavior ?? null
  if (seen === null) return says.noCause['nobody-looked']
  return says.noCause[seen === 'off' ? 'was-off' : 'unexplained']
}

/** The sentence that joins the cause and what was done about it. */
const doneAbout = (state: OrderState, cause: Finding): string[] => {
  const agreed = authorizedBundles(state).filter(({ findings }) => findings.includes(cause.code))
  const titles = (bundles: readonly IssuedBundle[]) =>
    bundles.map((bundle) => uncapitalized(bundleTitle(english, namedBundle(bundle))))
  const done = agreed.filter((bundle) => isDone(state, bundle))
  if (done.length > 0) return [says.done(titles(done))]
  return [agreed.length > 0 ? says.agreed(titles(agreed)) : says.nothingDone]
}

/** Tires that came in low beside those of the cause: the spare, and any that a finding names for more than information. */
const alsoLow = (state: OrderState, cause: Finding | null): string[] => {
  const left = new Set(lowAsLeft(state).map(({ wheel }) => wheel))
  const found = (state.diagnosis?.diagnosis.findings ?? []).filter(({ kind }) => kind !== 'note')
  const low = lowOnArrival(state)
    .filter(({ wheel }) => !left.has(wheel) && !cause?.wheels.includes(wheel))
    .filter(({ wheel }) => wheel === 'SP' || found.some(({ wheels }) => wheels.includes(wheel)))
  return low.length === 0 ? [] : [says.alsoLow(lowTires(low))]
}

/** What was left as it is: tires that are low, and holes that were seen and into which nobody looked. */
const leftPart = (state: OrderState, { diagnosis }: IssuedDiagnosis): FoundPart[] => {
  const low = lowAsLeft(state)
  const hole = diagnosis.findings.find(({ code }) => code === 'puncture-found')
  const left = [
    ...(low.length === 0 ? [] : [says.left.onTheLabel(lowTires(low))]),
    ...(hole === undefined || isSettledByWork(state, hole) ? [] : [uncapitalized(findingName(hole))]),
  ]
  if (left.length === 0) return []
  const word = low.length === 0 ? says.left.word : says.left.low
  return [plainPart('also-found', word, `${left.join('; ')}.`, [], null)]
}

const lowTires = (low: readonly LowWheel[]): LowTire[] =>
  low.map(({ wheel, psi, label }) => ({
    wheel: wheelNames[wheel],
    psi: number(psi, 'psi'),
    label: labelPressure(label).value,
  }))
