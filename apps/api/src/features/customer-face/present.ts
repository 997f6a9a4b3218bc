import type { CustomerOrder } from '@bayledger/contract/customer-face'
import type { FloorRow } from '@bayledger/contract/orders'
import { canonicalText, sha256Hex } from '@bayledger/ledger/digests'
import { answerable, answerTo, isLook, isReplaced } from '@bayledger/ledger/questions/answers'
import { dangersOf } from '@bayledger/ledger/questions/dangers'
import { placardPsi } from '@bayledger/ledger/questions/gates'
import { lookTermsOf } from '@bayledger/ledger/questions/look-terms'
import { bundleTotals, type MoneySides } from '@bayledger/ledger/questions/money'
import { type NextStep, nextSteps } from '@bayledger/ledger/questions/next-steps'
import { confirmedDiagnosis, toldFindings } from '@bayledger/ledger/questions/told-findings'
import type { IssuedBundle, OrderState } from '@bayledger/ledger/state'
import { wheelShortfalls } from '@bayledger/reckoning/diagnosis/facts/wheel-shortfall'
import { readingOrder } from '@bayledger/reckoning/wheels'
import { remedyLines } from '@bayledger/report/compose/found-parts'
import { reasonLine } from '@bayledger/report/compose/reason-line'
import { canDrive } from '@bayledger/report/compose/verdicts'
import type { CustomerLanguage } from '@bayledger/wording/language'
import { nextStepWords } from '@bayledger/wording/next-steps'
import { photoSubject } from '@bayledger/wording/photos'
import { whenWords } from '@bayledger/wording/ready'
import { shortfallWords } from '@bayledger/wording/shortfalls'
import { type ShownEstimate, shownEstimate } from '@bayledger/wording/shown-estimate'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'

export type CustomerContext = {
  /** That of the customer's card. */
  readonly language: CustomerLanguage
  readonly shopName: string
  readonly shopPhone: string | null
  readonly timeZone: string
  /** The shop's own day, YYYY-MM-DD. */
  readonly today: string
  readonly customerName: string
  readonly vehicleDescription: string
  readonly color: string | null
  /** When it will be ready; `null` where nothing can be said. */
  readonly ready: FloorRow['ready']
  /** Now, UTC text. */
  readonly now: string
  /** Digests of the photos that can be shown. */
  readonly photosReceived: ReadonlySet<string>
}

/** Everything that the customer's phone may know of an order, field by field. */
export const presentCustomerOrder = (
  state: OrderState,
  money: MoneySides,
  context: CustomerContext,
): CustomerOrder => ({
  language: context.language.code,
  shopName: context.shopName,
  shopPhone: context.shopPhone,
  timeZone: context.timeZone,
  customerName: context.customerName,
  vehicleDescription: context.vehicleDescription,
  color: context.color,
  orderNumber: state.opened?.orderNumber ?? '',
  drive: presentDrive(state, context),
  ready: context.ready && readyWords(context.ready, context),
  light: state.arrival.telltale?.behavior ?? null,
  findings: presentFindings(state, money, context.language),
  technicianDiffers: confirmedDiagnosis(state) !== null && state.diagnosis?.confirmed?.agrees === false,
  gauges: Object.fromEntries(
    readingOrder.flatMap((wheel) => {
      const pressure = state.arrival.wheels[wheel]?.gauge?.pressure
      return pressure ? [[wheel, { ...pressure, labelPsi: placardPsi(state, wheel) }]] : []
    }),
  ),
  lacks: presentLacks(state, context.language),
  silent: presentSilent(state),
  estimate: presentEstimate(state, money, context.language),
  photos: presentPhotos(state, context),
  report: presentReport(state),
})

/** When it will be ready, in the customer's language and by the shop's clock. */
const readyWords = (
  ready: NonNullable<FloorRow['ready']>,
  { language, timeZone, now }: Pick<CustomerContext, 'language' | 'timeZone' | 'now'>,
): string => {
  if (ready.is === 'part-without-date') return language.ready.partWithoutDate
  const when = (instant: string) => whenWords(instant, { locale: language.locale, timeZone, now })
  return ready.partAt === null
    ? language.ready.about(when(ready.at))
    : language.ready.afterPart({ when: when(ready.at), part: when(ready.partAt) })
}

const presentDrive = (state: OrderState, context: CustomerContext): CustomerOrder['drive'] => {
  if (!confirmedDiagnosis(state))
    return {
      verdict: 'not-yet-known',
      sentence: context.language.verdicts.driveNotYetKnown,
      advice: [],
      how: null,
    }
  const { answer, words } = canDrive(state, context)
  return {
    verdict: answer === 'do-not-drive' ? 'do-not-drive' : 'may-drive',
    sentence: words,
    ...adviceOn(state, context),
  }
}

/** What a person with the page in hand needs now; the rest of what comes next is on the report. */
const adviceOn = (
  state: OrderState,
  { language, today, shopPhone }: CustomerContext,
): Pick<CustomerOrder['drive'], 'advice' | 'how'> => {
  const steps = nextSteps(state, today)
  const say = (step: NextStep) =>
    nextStepWords(language.nextSteps, step, { telephone: shopPhone, person: null })
  const often = steps.find((step) => step.code === 'check-pressures' && step.every !== 'month')
  return {
    advice: steps.filter(({ code }) => toldAtOnce.has(code)).map(say),
    how: often === undefined ? null : say(often),
  }
}

const toldAtOnce: ReadonlySet<NextStep['code']> = new Set([
  'call-before-moving',
  'tow-or-spare',
  'on-the-spare',
])

/** What stops the vehicle with what removes it, then what explains the light. */
const presentFindings = (
  state: OrderState,
  money: MoneySides,
  language: CustomerLanguage,
): CustomerOrder['findings'] => {
  const dangers = dangersOf(state)
  return toldFindings(state).map(({ finding, severity }) => ({
    code: finding.code,
    severity,
    wheels: finding.wheels,
    sentence: sentenceFor(language, finding),
    figures: finding.because.map((reason) => reasonLine({ language }, reason)),
    remedies: dangers
      .filter((danger) => danger.finding === finding && danger.isOpen)
      .flatMap((danger) => remedyLines(danger, { language, money })),
  }))
}

/** Only where it is known: that a temperature is missing helps no customer. */
const presentLacks = (state: OrderState, { shortfalls }: CustomerLanguage): CustomerOrder['lacks'] => {
  const { diagnosis } = state
  const named = new Set(toldFindings(state).flatMap(({ finding }) => finding.wheels))
  return (diagnosis ? wheelShortfalls(diagnosis.evidence) : [])
    .filter(({ wheel, why }) => named.has(wheel) && typeof why !== 'string')
    .map((shortfall) => ({ wheel: shortfall.wheel, words: shortfallWords(shortfalls, shortfall) }))
}

/** The proof of a sensor that does not work, at its wheel. */
const presentSilent = (state: OrderState): CustomerOrder['silent'] => {
  const named = new Set(toldFindings(state).flatMap(({ finding }) => finding.wheels))
  return Object.fromEntries(
    readingOrder.flatMap((wheel) => {
      const reading = state.arrival.wheels[wheel]?.sensor?.reading
      return named.has(wheel) && reading?.answer === 'silent' ? [[wheel, reading.tries]] : []
    }),
  )
}

/** What a customer is shown of the newest version, and the text that is kept with the answers to it. */
export const shownToCustomer = (
  state: OrderState,
  money: MoneySides,
  language: CustomerLanguage,
): { readonly estimate: ShownEstimate; readonly text: string } | null => {
  const issued = state.estimates.at(-1)
  const estimate = issued ? shownEstimate(language, issued, money) : null
  return estimate && { estimate, text: canonicalText(estimate) }
}

const presentEstimate = (
  state: OrderState,
  money: MoneySides,
  language: CustomerLanguage,
): CustomerOrder['estimate'] => {
  const issued = state.estimates.at(-1)
  const shown = shownToCustomer(state, money, language)
  if (!issued || !shown) return null
  const { revision, bundles, totalCents } = shown.estimate
  const dangers = new Set<string>(dangersOf(state).map(({ finding }) => finding.code))
  return {
    revision,
    digest: issued.digest,
    shown: sha256Hex(shown.text),
    issuedAt: issued.written.writtenAt,
    readyAt: issued.scope.readyAt,
    totalCents,
    look: lookTermsOf(state, money),
    bundles: bundles.map((bundle) => {
      const own = issued.scope.bundles.find(({ bundleKey }) => bundleKey === bundle.bundleKey)
      const answer = own ? (answerTo(state, own)?.answer ?? null) : null
      const open = own && state.reports.length === 0 ? answerable(state, own) : 'no'
      const isOffered = open === 'any' && own !== undefined && !isReplaced(state, own)
      return {
        ...bundle,
        removesDanger: own?.findings.some((code) => dangers.has(code)) ?? false,
        lines: [...bundle.lines],
        cautions: [...bundle.cautions],
        since: sinceBefore(state, money, own),
        answer,
        agreedBefore: own !== undefined && isLook(own),
        answerable: isOffered,
        mayTakeBack: open === 'no-only',
      }
    }),
  }
}

type Since = NonNullable<CustomerOrder['estimate']>['bundles'][number]['since']

/** What a bundle is against the version before; `null` where there is none, it is the same, or its price was erased. */
const sinceBefore = (state: OrderState, money: MoneySides, own: IssuedBundle | undefined): Since => {
  const before = state.estimates.at(-2)?.scope.bundles
  if (before === undefined || own === undefined) return null
  const same = before.find(({ bundleKey }) => bundleKey === own.bundleKey)
  if (same === undefined) return { is: 'new' }
  const beforeCents = bundleTotals(money, same)?.totalCents
  return same.money === own.money || beforeCents === undefined ? null : { is: 'changed', beforeCents }
}

const presentPhotos = (
  state: OrderState,
  { language, photosReceived }: CustomerContext,
): CustomerOrder['photos'] =>
  state.photos
    .filter(({ shared, digest }) => shared && photosReceived.has(digest))
    .map((photo) => ({
      digest: photo.digest,
      where: photo.wheel === null ? language.photos.vehicle : language.wheels.names[photo.wheel],
      what: photoSubject(language, photo, state.plan?.plan.steps ?? []),
      takenAt: photo.picture?.takenAt ?? photo.written.writtenAt,
    }))

const presentReport = (state: OrderState): CustomerOrder['report'] => {
  const sealed = state.reports.at(-1)
  return sealed?.reportNumber ? { number: sealed.reportNumber, sealedAt: sealed.written.writtenAt } : null
}
