import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import { sumCents } from '@bayledger/reckoning/money/cents'
import { isOverLimit, limitOf } from '@bayledger/reckoning/money/discount'
import { totalsAreRight } from '@bayledger/reckoning/money/totals'
import { refuse } from '../../admit/refusal.ts'
import { holdsOneOf } from '../../admit/refuse-role.ts'
import type { Rules } from '../../admit/rule.ts'
import { digestOf } from '../../digests.ts'
import { areAlternatives } from '../../questions/alternatives.ts'
import { answerable, answerTo, isLook, newestBundles } from '../../questions/answers.ts'
import { cautionsOwed } from '../../questions/cautions-owed.ts'
import { bundleMoney, paidBySides, payment, pricedEstimate } from '../../questions/money.ts'
import { namedBundle } from '../../questions/named.ts'
import { repairNotOffered } from '../../questions/repair-refused.ts'
import { noSoundSpare } from '../../questions/sound-spare.ts'
import { workBegan } from '../../questions/work-began.ts'
import type { PayloadOf } from '../../registry.ts'
import { refundRoles } from '../../role.ts'
import { isSameValue } from '../../same-value.ts'
import type { IssuedBundle, OrderState } from '../../state.ts'
import { refuseCover } from './cover-rules.ts'
import { droppedSafety } from './dropped-safety.ts'
import type { consentKinds } from './kinds.ts'
import { silencedWheels } from './silenced-wheels.ts'

export const consentRules: Rules<keyof typeof consentKinds> = {
  'estimate.issued': [
    (state, { payload }) =>
      payload.scope.revision === state.estimates.length + 1
        ? null
        : refuse('ESTIMATE_REVISION_STALE', { to: 'issue', newest: state.estimates.length }),
    (state, { payload }) =>
      state.diagnosis?.written.entryId === payload.diagnosisId &&
      state.diagnosis.confirmed &&
      !state.diagnosis.outdated
        ? null
        : refuse('ESTIMATE_FINDINGS_UNCONFIRMED', {}),
    (_state, { payload }) =>
      digestOf(payload.scope) === payload.digest ? null : refuse('ESTIMATE_DIGEST_DIFFERS', { to: 'issue' }),
    (_state, { payload }, facts) => {
      const priced = pricedEstimate(facts.money, payload.scope)
      if (!priced) return refuse('MONEY_MISSING', {})
      return totalsAreRight(priced) ? null : refuse('ESTIMATE_TOTALS_DIFFER', {})
    },
    refuseCover,
    // What an earlier version held already was admitted with it, whoever writes now.
    (state, { payload: { scope } }, facts) => {
      const roles = facts.author.kind === 'staff' ? (facts.staff.get(facts.author.staffId) ?? []) : []
      const limit = limitOf(facts.discountLimits, roles)
      const before = new Set(
        state.estimates.flatMap((issued) => issued.scope.bundles.map(({ money }) => money)),
      )
      const over = scope.bundles.find(
        (bundle) =>
          !before.has(bundle.money) &&
          isOverLimit(bundleMoney(facts.money, bundle.money)?.lines ?? [], limit),
      )
      return over
        ? refuse('DISCOUNT_OVER_LIMIT', { bundle: namedBundle(over), limitPercentThousandths: limit })
        : null
    },
    (_state, { payload: { scope } }) => {
      const keys = new Set(scope.bundles.map(({ bundleKey }) => bundleKey))
      const isClear =
        keys.size === scope.bundles.length &&
        scope.bundles.every(
          ({ bundleKey, alternativeTo }) =>
            alternativeTo === null || (alternativeTo !== bundleKey && keys.has(alternativeTo)),
        )
      return isClear ? null : refuse('ESTIMATE_BUNDLES_UNCLEAR', {})
    },
    (state, { payload }) =>
      state.sheet?.sheet.system !== 'direct' &&
      payload.scope.bundles.some(({ works }) => works.some(({ kind }) => kind === 'fit-sensor'))
        ? refuse('ESTIMATE_SENSOR_FORBIDDEN', {})
        : null,
    // The repair of a hole is priced only after the look inside has judged it.
    (state, { payload }) =>
      payload.scope.bundles
        .flatMap(({ works }) => works)
        .flatMap((work) => (work.kind === 'repair-puncture' ? [repairNotOffered(state, work.wheel)] : []))
        .find((refused) => refused !== null) ?? null,
    (state, { payload }) => {
      const [dropped] = droppedSafety(state, payload.scope.bundles)
      return dropped ? refuse('ESTIMATE_SAFETY_DROPPED', { bundle: namedBundle(dropped) }) : null
    },
    (state, { payload }) => {
      const silenced = silencedWheels(state, payload.scope.bundles)
      return silenced.length === 0 ? null : refuse('ESTIMATE_SENSOR_SILENCED', { wheels: silenced })
    },
  ],
  'estimate.shown': [
    (state, { payload }) =>
      payload.revision === state.estimates.length
        ? null
        : refuse('ESTIMATE_REVISION_STALE', { to: 'show', newest: state.estimates.length }),
  ],
  'estimate.decided': [
    (_state, { payload }) => (payload.shown === null ? refuse('SHOWN_MISSING', {}) : null),
    (state, { payload }) => {
      const newest = state.estimates.at(-1)
      if (!newest || newest.scope.revision !== payload.revision)
        return refuse('ESTIMATE_REVISION_STALE', { to: 'answer', newest: state.estimates.length })
      return newest.digest === payload.digest ? null : refuse('ESTIMATE_DIGEST_DIFFERS', { to: 'answer' })
    },
    (state, { payload }) => {
      const bundles = newestBundles(state)
      const yes = yesAfter(state, payload.answers)
      const owed = (bundle: IssuedBundle) => cautionsOwed(bundle, bundles, yes)
      const asked = new Set<string>()
      for (const { bundleKey, answer, cautionsShown } of payload.answers) {
        const bundle = bundles.find((candidate) => candidate.bundleKey === bundleKey)
        if (!bundle || asked.has(bundleKey)) return refuse('BUNDLE_UNKNOWN', { bundleKey })
        asked.add(bundleKey)
        if (isLook(bundle))
          return refuse('BUNDLE_ALREADY_DECIDED', { bundle: namedBundle(bundle), why: 'agreed-before' })
        const open = answerable(state, bundle)
        const reverses = open === 'yes-only' && answer === 'authorized' && payload.consent.channel !== 'link'
        const takesBack = open === 'no-only' && answer === 'declined'
        const began = open === 'no' && answer === 'declined' ? workBegan(state, bundle) : null
        if (began) return refuse('BUNDLE_WORK_BEGAN', { bundle: namedBundle(bundle), ...began })
        if (open !== 'any' && !reverses && !takesBack)
          return refuse('BUNDLE_ALREADY_DECIDED', {
            bundle: namedBundle(bundle),
            why: open === 'yes-only' ? 'declined' : 'authorized',
          })
        if (answer !== 'authorized' && bundle.safety && !showsAll(owed(bundle), cautionsShown))
          return refuse('CAUTION_NOT_SHOWN', { bundle: namedBundle(bundle) })
      }
      return null
    },
    (state, { payload }) => {
      const yes = yesAfter(state, payload.answers)
      const wanted = newestBundles(state).filter(({ bundleKey }) => yes.has(bundleKey))
      const both = wanted.find(
        (bundle) => bundle.alternativeTo !== null && wanted.some((other) => areAlternatives(bundle, other)),
      )
      return both ? refuse('BUNDLE_ALTERNATIVES_BOTH', { bundle: namedBundle(both) }) : null
    },
    (_state, { payload: { consent } }, { author }) => {
      const isTheirs =
        author.kind === 'customer'
          ? consent.channel === 'link' && consent.linkId === author.linkId
          : consent.channel !== 'link'
      return isTheirs ? null : refuse('CONSENT_NOT_WRITERS', {})
    },
  ],
  'refusal.recorded': [
    (state, { payload }) => {
      const found = new Set((state.diagnosis?.diagnosis.findings ?? []).map(({ code }) => code as string))
      const unknown = payload.codes.find((code) => !found.has(code))
      return unknown ? refuse('STOP_NOT_FOUND', { finding: unknown, stops: false }) : null
    },
    (state, { payload: { codes, leaves } }) => {
      const why = leaves === 'sound-spare' ? noSoundSpare(state, codes) : null
      return why === null ? null : refuse('SPARE_NOT_SOUND', { why })
    },
  ],
  'payment.noted': [
    (_state, { payload }, facts) => {
      const noted = payment(facts.money, payload.money)
      if (!noted) return refuse('MONEY_MISSING', {})
      if (noted.amountCents < 0 && !holdsOneOf(refundRoles, facts))
        return refuse('REFUND_NOT_ALLOWED', { roles: refundRoles })
      return noted.amountCents < 0 === (payload.back !== null) ? null : refuse('REFUND_UNCLEAR', {})
    },
    (state, { payload: { money, method, back } }, facts) => {
      if (!back) return null
      if (!isSameValue(back.of, paidBySides(state, method))) return refuse('PAYMENT_UNKNOWN', {})
      const sums = [...back.of, money].map((digest) => payment(facts.money, digest)?.amountCents)
      if (sums.includes(undefined)) return refuse('MONEY_MISSING', {})
      const left = sumCents(sums.slice(0, -1).map((cents) => cents ?? 0))
      return left + (sums.at(-1) ?? 0) < 0 ? refuse('REFUND_OVER_PAID', { method, leftCents: left }) : null
    },
  ],
  'payment.corrected': [
    (state, { payload }) => {
      const noted = state.payments.find(({ written }) => written.entryId === payload.paymentId)
      return noted && noted.money === payload.replaces ? null : refuse('PAYMENT_UNKNOWN', {})
    },
    // Whoever makes a payment smaller gives money back, as far as the record goes.
    (state, { payload }, facts) => {
      const [before, now] = [payment(facts.money, payload.replaces), payment(facts.money, payload.money)]
      if (!before || !now) return refuse('MONEY_MISSING', {})
      const method = state.payments.find(({ written }) => written.entryId === payload.paymentId)?.method
      if (before.amountCents === now.amountCents && method === payload.method)
        return refuse('PAYMENT_CHANGES_NOTHING', {})
      return now.amountCents < before.amountCents && !holdsOneOf(refundRoles, facts)
        ? refuse('REFUND_NOT_ALLOWED', { roles: refundRoles })
        : null
    },
  ],
}

/** The bundles that are authorized once these answers are recorded. */
const yesAfter = (
  state: OrderState,
  given: PayloadOf<'estimate.decided'>['answers'],
): ReadonlySet<string> => {
  const answers = new Map(given.map(({ bundleKey, answer }) => [bundleKey, answer]))
  return new Set(
    newestBundles(state)
      .filter((bundle) => (answers.get(bundle.bundleKey) ?? answerTo(state, bundle)?.answer) === 'authorized')
      .map(({ bundleKey }) => bundleKey),
  )
}

/** Whether every caution of a bundle was shown, in the version that the bundle names. */
const showsAll = (cautions: readonly CautionReference[], shown: readonly CautionReference[]): boolean =>
  cautions.every(({ number, version }) =>
    shown.some((one) => one.number === number && one.version === version),
  )
