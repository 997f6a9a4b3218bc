import { type Danger, dangersOf } from '@bayledger/ledger/questions/dangers'
import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import { type LowWheel, lowAsLeft, lowOnArrival } from '@bayledger/ledger/questions/low-wheels'
import { bundleTotals } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { severityOf } from '@bayledger/ledger/questions/severity'
import type { IssuedBundle, IssuedDiagnosis, OrderState } from '@bayledger/ledger/state'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { wheelList } from '@bayledger/wording/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import type { FoundPart } from '../content.ts'
import { personalText, type ReportContext } from './context.ts'
import { isDone } from './done-bundles.ts'
import { dollars, labelPressure, listed, number } from './figures.ts'
import { proofOfFinding } from './proof-figure.ts'

/** What page one says was found: each danger, the cause of the light, and the tires that were left low. */
export const foundParts = (state: OrderState, context: ReportContext): readonly FoundPart[] => {
  const issued = state.diagnosis
  if (!issued)
    return [plainPart('not-checked', 'Not checked', 'No findings were issued on this order.', [], null)]
  const dangers = dangersOf(state).map((danger) => dangerPart(danger, issued, context))
  return [...dangers, lightPart(state, issued, context), ...lowPart(state)]
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
      'Unsafe when it came, settled here',
      `${findingName(finding)}.`,
      [],
      written.seq,
    )
  if (danger.isOffTheRoad)
    return plainPart(
      'for-information',
      'Unsafe when it came; the spare is on in its place',
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
  if (remedies.length === 0)
    return [`What removes it: ${unpriced(finding)}. No price was given; we price it when you ask.`]
  return remedies.map(
    ({ bundle, decision }) =>
      `What removes it: ${offerWords(bundle, context)}. ${decision ? answered[decision.answer] : 'You have not answered.'}`,
  )
}

const answered = {
  authorized: 'You said Yes; it is not finished.',
  declined: 'You said No.',
  deferred: 'You said Later.',
} as const

/** The work that a finding offers, where no estimate names it. */
const unpriced = ({ offers, wheels }: Finding): string => {
  const named = { bundleKey: '', wheels, asWritten: null }
  if (offers.includes('tire')) return uncapitalized(bundleTitle(english, { ...named, title: 'tire' }))
  if (offers.includes('stem')) return uncapitalized(bundleTitle(english, { ...named, title: 'stem' }))
  return 'a repair'
}

/** "new tire, left front, $214.50 with tax" */
const offerWords = (bundle: IssuedBundle, { money }: Pick<ReportContext, 'money'>): string => {
  const cents = bundleTotals(money, bundle)?.totalCents ?? null
  const price = cents === null ? 'price erased on request' : `${dollars(cents)} with tax`
  return `${uncapitalized(bundleTitle(english, namedBundle(bundle)))}, ${price}`
}

const uncapitalized = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

/** The technician's own finding where they disagreed; else the cause of the light, or why there is none to name. */
const lightPart = (state: OrderState, issued: IssuedDiagnosis, context: ReportContext): FoundPart => {
  const { confirmed, diagnosis, written } = issued
  if (confirmed?.agrees === false)
    return plainPart(
      'cause',
      english.severities.cause,
      `${confirmed.ownFinding} (the technician’s own finding: ${personalText(context, confirmed.reason)})`,
      [],
      confirmed.written.seq,
    )
  const cause = diagnosis.findings.find(({ code }) => code === diagnosis.primary)
  const also = alsoLow(state, cause ?? null)
  if (!cause) return plainPart('for-information', 'The warning light', withoutCause(state), also, written.seq)
  if (cause.kind === 'stop')
    return plainPart(
      'cause',
      'Cause of the light',
      'The danger above also explains the light.',
      also,
      written.seq,
    )
  const severity = severityOf(cause, diagnosis.primary)
  return {
    severity,
    word: severity === 'cause' ? 'Cause of the light' : english.severities[severity],
    sentence: sentenceFor(english, cause),
    proof: proofOfFinding(cause),
    remedy: [...doneAbout(state, cause), ...also],
    entry: written.seq,
  }
}

const withoutCause = (state: OrderState): string => {
  const seen = state.arrival.telltale?.behavior ?? null
  if (seen === null) return 'Nobody saw what it does, so no cause is named.'
  return seen === 'off'
    ? 'It was off when we looked, so there is no cause of a light to name.'
    : 'Nothing was found that explains it.'
}

/** The sentence that joins the cause and what was done about it. */
const doneAbout = (state: OrderState, cause: Finding): string[] => {
  const agreed = authorizedBundles(state).filter(({ findings }) => findings.includes(cause.code))
  const titles = (bundles: readonly IssuedBundle[]) =>
    listed(bundles.map((bundle) => uncapitalized(bundleTitle(english, namedBundle(bundle)))))
  const done = agreed.filter((bundle) => isDone(state, bundle))
  if (done.length > 0) return [`Done about it: ${titles(done)}.`]
  return agreed.length > 0 ? [`Agreed and not finished: ${titles(agreed)}.`] : ['Nothing was done about it.']
}

/** Tires that came in low beside those of the cause: the spare, and any that a finding names for more than information. */
const alsoLow = (state: OrderState, cause: Finding | null): string[] => {
  const left = new Set(lowAsLeft(state).map(({ wheel }) => wheel))
  const found = (state.diagnosis?.diagnosis.findings ?? []).filter(({ kind }) => kind !== 'note')
  const low = lowOnArrival(state)
    .filter(({ wheel }) => !left.has(wheel) && !cause?.wheels.includes(wheel))
    .filter(({ wheel }) => wheel === 'SP' || found.some(({ wheels }) => wheels.includes(wheel)))
  return low.length === 0 ? [] : [`Also low when it came: ${lowWords(low)}.`]
}

const lowPart = (state: OrderState): FoundPart[] => {
  const low = lowAsLeft(state)
  return low.length === 0
    ? []
    : [plainPart('also-found', 'Left low', `${lowWords(low)} on the label.`, [], null)]
}

/** "right rear 24.0 psi of 33" */
const lowWords = (low: readonly LowWheel[]): string =>
  listed(
    low.map(
      ({ wheel, psi, label }) =>
        `${wheelNames[wheel]} ${number(psi, 'psi')} psi of ${labelPressure(label).value}`,
    ),
  )
