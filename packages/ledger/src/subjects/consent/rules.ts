import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import { totalsAreRight } from '@bayledger/reckoning/money/totals'
import { refuse } from '../../admit/refusal.ts'
import { holdsOneOf } from '../../admit/refuse-role.ts'
import type { Rules } from '../../admit/rule.ts'
import { digestOf } from '../../digests.ts'
import { answerTo, newestBundles } from '../../questions/answers.ts'
import { payment, pricedEstimate } from '../../questions/money.ts'
import { namedBundle } from '../../questions/named.ts'
import { refundRoles } from '../../role.ts'
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
      const asked = new Set<string>()
      for (const { bundleKey, answer, cautionsShown } of payload.answers) {
        const bundle = bundles.find((candidate) => candidate.bundleKey === bundleKey)
        if (!bundle || asked.has(bundleKey)) return refuse('BUNDLE_UNKNOWN', { bundleKey })
        asked.add(bundleKey)
        const earlier = state.answers[bundleKey]
        if (earlier && earlier.revision === payload.revision && earlier.answer !== 'deferred')
          return refuse('BUNDLE_ALREADY_DECIDED', { bundle: namedBundle(bundle) })
        if (answer !== 'authorized' && bundle.safety && !showsAll(bundle.cautions, cautionsShown))
          return refuse('CAUTION_NOT_SHOWN', { bundle: namedBundle(bundle) })
      }
      return null
    },
    (state, { payload }) => {
      const answers = new Map(payload.answers.map(({ bundleKey, answer }) => [bundleKey, answer]))
      const yes = new Set(
        newestBundles(state)
          .filter(
            (bundle) => (answers.get(bundle.bundleKey) ?? answerTo(state, bundle)?.answer) === 'authorized',
          )
          .map(({ bundleKey }) => bundleKey),
      )
      const both = newestBundles(state).find(
        ({ bundleKey, alternativeTo }) =>
          alternativeTo !== null && yes.has(bundleKey) && yes.has(alternativeTo),
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
  ],
  'payment.noted': [
    (_state, { payload }, facts) => {
      const noted = payment(facts.money, payload.money)
      if (!noted) return refuse('MONEY_MISSING', {})
      return noted.amountCents < 0 && !holdsOneOf(refundRoles, facts)
        ? refuse('REFUND_NOT_ALLOWED', { roles: refundRoles })
        : null
    },
  ],
}

/** Whether every caution of a bundle was shown, in the version that the bundle names. */
const showsAll = (cautions: readonly CautionReference[], shown: readonly CautionReference[]): boolean =>
  cautions.every(({ number, version }) =>
    shown.some((one) => one.number === number && one.version === version),
  )
