import { totalsAreRight } from '@bayledger/reckoning/money/totals'
import { wheelNames } from '@bayledger/reckoning/wheels'
import { refuse } from '../../admit/refusal.ts'
import { holdsOneOf } from '../../admit/refuse-role.ts'
import type { Rules } from '../../admit/rule.ts'
import { digestOf } from '../../hash-chain.ts'
import { answerTo, newestBundles } from '../../questions/answers.ts'
import { refundRoles } from '../../role.ts'
import type { consentKinds } from './kinds.ts'
import { silencedWheels } from './silenced-wheels.ts'

export const consentRules: Rules<keyof typeof consentKinds> = {
  'estimate.issued': [
    (state, { payload }) =>
      payload.estimate.revision === state.estimates.length + 1
        ? null
        : refuse(
            'ESTIMATE_REVISION_STALE',
            `The next version of this estimate is ${state.estimates.length + 1}. Open the order again and build from there.`,
          ),
    (state, { payload }) =>
      state.diagnosis?.written.entryId === payload.diagnosisId &&
      state.diagnosis.confirmed &&
      !state.diagnosis.outdated
        ? null
        : refuse(
            'ESTIMATE_FINDINGS_UNCONFIRMED',
            'An estimate follows confirmed findings. Let the technician confirm the present ones first.',
          ),
    (_state, { payload }) =>
      digestOf(payload.estimate) === payload.digest
        ? null
        : refuse('ESTIMATE_DIGEST_DIFFERS', 'The estimate was changed on its way here. Build it again.'),
    (_state, { payload }) =>
      totalsAreRight(payload.estimate)
        ? null
        : refuse(
            'ESTIMATE_TOTALS_DIFFER',
            'The totals are not the sums of the lines. Build the estimate again.',
          ),
    (_state, { payload: { estimate } }) => {
      const keys = new Set(estimate.bundles.map(({ bundleKey }) => bundleKey))
      const isClear =
        keys.size === estimate.bundles.length &&
        estimate.bundles.every(
          ({ bundleKey, alternativeTo }) =>
            alternativeTo === null || (alternativeTo !== bundleKey && keys.has(alternativeTo)),
        )
      return isClear
        ? null
        : refuse(
            'ESTIMATE_BUNDLES_UNCLEAR',
            'Two parts of this estimate have one key, or one replaces a part that is not there. Build it again.',
          )
    },
    (state, { payload }) =>
      state.sheet?.sheet.system !== 'direct' &&
      payload.estimate.bundles.some(({ works }) => works.some(({ kind }) => kind === 'fit-sensor'))
        ? refuse(
            'ESTIMATE_SENSOR_FORBIDDEN',
            'This vehicle has no sensors in its wheels; none can be sold for it.',
          )
        : null,
    (state, { payload }) => {
      const silenced = silencedWheels(state, payload.estimate)
      return silenced.length === 0
        ? null
        : refuse(
            'ESTIMATE_SENSOR_SILENCED',
            `A plain stem would silence a sensor that is not known to be dead: ${silenced.map((wheel) => wheelNames[wheel]).join(', ')}. Ask it twice, name the stem of its sensor on the vehicle's sheet, or decline the work.`,
          )
    },
  ],
  'estimate.shown': [
    (state, { payload }) =>
      payload.revision === state.estimates.length
        ? null
        : refuse('ESTIMATE_REVISION_STALE', 'A newer version of this estimate exists. Show that one.'),
  ],
  'estimate.decided': [
    (state, { payload }) => {
      const newest = state.estimates.at(-1)
      if (!newest || newest.estimate.revision !== payload.revision)
        return refuse(
          'ESTIMATE_REVISION_STALE',
          'A newer version of this estimate exists. Read that one and answer it.',
        )
      return newest.digest === payload.digest
        ? null
        : refuse(
            'ESTIMATE_DIGEST_DIFFERS',
            'What was answered is not what this shop issued. Open the estimate again and answer it.',
          )
    },
    (state, { payload }) => {
      const bundles = newestBundles(state)
      const asked = new Set<string>()
      for (const { bundleKey, answer, cautionShown } of payload.answers) {
        const bundle = bundles.find((candidate) => candidate.bundleKey === bundleKey)
        if (!bundle || asked.has(bundleKey))
          return refuse('BUNDLE_UNKNOWN', `"${bundleKey}" is not in this estimate or is answered twice here.`)
        asked.add(bundleKey)
        const earlier = state.answers[bundleKey]
        if (earlier && earlier.revision === payload.revision && earlier.answer !== 'deferred')
          return refuse(
            'BUNDLE_ALREADY_DECIDED',
            `"${bundle.title}" is already answered. Only what was put off can be answered again.`,
          )
        if (answer !== 'authorized' && bundle.safety && cautionShown === null)
          return refuse(
            'CAUTION_NOT_SHOWN',
            `"${bundle.title}" concerns safety: show its caution before a No or Later is recorded.`,
          )
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
      return both
        ? refuse(
            'BUNDLE_ALTERNATIVES_BOTH',
            `"${both.title}" replaces another line; say Yes to one of the two.`,
          )
        : null
    },
    (_state, { payload: { consent } }, { author }) => {
      const isTheirs =
        author.kind === 'customer'
          ? consent.channel === 'link' && consent.linkId === author.linkId
          : consent.channel !== 'link'
      return isTheirs
        ? null
        : refuse(
            'CONSENT_NOT_WRITERS',
            'A consent by link is written by that link alone; one at the desk or by telephone, by the staff. Record how it was given.',
          )
    },
  ],
  'refusal.recorded': [
    (state, { payload }) => {
      const found = new Set((state.diagnosis?.diagnosis.findings ?? []).map(({ code }) => code as string))
      const unknown = payload.codes.find((code) => !found.has(code))
      return unknown ? refuse('STOP_NOT_FOUND', `"${unknown}" is not among the present findings.`) : null
    },
  ],
  'payment.noted': [
    (_state, { payload }, facts) =>
      payload.amountCents < 0 && !holdsOneOf(refundRoles, facts)
        ? refuse(
            'REFUND_NOT_ALLOWED',
            `Money is given back by: ${refundRoles.join(', ')}. Ask one of them to record it.`,
          )
        : null,
  ],
}
