import { type Refusal, refuse } from '../../admit/refusal.ts'
import { refuseOdometer } from '../../admit/refuse-odometer.ts'
import type { Rules } from '../../admit/rule.ts'
import { markOfEntry } from '../../questions/entry-places.ts'
import { brokenSensors, handBackGate, insecureWheels, sealGate } from '../../questions/gates.ts'
import { beforeLeaving, odometerDoubt } from '../../questions/odometer.ts'
import { isSettleable } from '../../questions/open-holds.ts'
import { proofOf } from '../../questions/proof.ts'
import { definitionOf } from '../../registry.ts'
import { isSamePerson } from '../../same-person.ts'
import type { OrderState } from '../../state.ts'
import type { closingKinds } from './kinds.ts'

/** An order may end without a report only while every wheel is secured and every sensor that we broke was replaced. */
const stands = (state: OrderState): Refusal | null => {
  const [wheel] = insecureWheels(state)
  if (wheel) return refuse('WHEEL_NOT_SECURED', { wheel })
  const [broken] = brokenSensors(state)
  return broken ? refuse('SENSOR_BROKEN_OPEN', { wheel: broken }) : null
}

export const closingRules: Rules<keyof typeof closingKinds> = {
  'report.sealed': [
    (state, { payload }) =>
      payload.composedFrom.seq === state.seq && payload.composedFrom.hash === state.headHash
        ? null
        : refuse('REPORT_HEAD_MOVED', {}),
    (state, { payload }) =>
      payload.supersedes === (state.reports.at(-1)?.reportNumber ?? null)
        ? null
        : refuse('REPORT_SUPERSEDES_OTHER', {}),
    (state) => {
      const [first] = sealGate(state)
      return first ? refuse('SEAL_GATE_CLOSED', { reason: first }) : null
    },
  ],
  'order.handed_back': [
    // The danger is named first; the report is not sealed over it either.
    (state) => {
      const [first] = handBackGate(state)
      return first ? refuse('HAND_BACK_GATE_CLOSED', { reason: first }) : null
    },
    (state) => (state.reports.length > 0 ? null : refuse('REPORT_NOT_SEALED', {})),
    (state, { payload: { odometer, odometerConfirmed } }, { earlierOdometer, now }) =>
      odometer &&
      refuseOdometer(odometerDoubt(odometer, beforeLeaving(state, earlierOdometer, now), odometerConfirmed)),
    (state, { payload }) =>
      proofOf(state).verdict === 'not-yet-proven' && payload.releaseAgreedBy === null
        ? refuse('RELEASE_NOT_AGREED', {})
        : null,
  ],
  'order.refused': [stands],
  'order.withdrawn': [stands],
  'hold.settled': [
    (state, { payload }) =>
      state.holds.some((hold) => isSettleable(hold, payload.entryId)) ? null : refuse('HOLD_UNKNOWN', {}),
  ],
  'entry.struck': [
    (state, draft) => {
      const target = markOfEntry(state, draft.payload.entryId)
      if (!target) return refuse('STRIKE_TARGET_UNKNOWN', {})
      if (target.struck) return refuse('STRIKE_ALREADY_STRUCK', {})
      const { strikable } = definitionOf(target.kind)
      if (strikable === 'no') return refuse('STRIKE_NOT_ALLOWED', {})
      if (draft.payload.reason === 'undone') {
        if (!isSamePerson(target.by, draft.writtenBy)) return refuse('STRIKE_NOT_OWN', {})
        if (strikable === 'second-person') return refuse('STRIKE_NEEDS_SECOND_PERSON', { to: 'undo' })
      }
      return strikable === 'second-person' && draft.payload.secondPerson === null
        ? refuse('STRIKE_NEEDS_SECOND_PERSON', { to: 'withdraw' })
        : null
    },
  ],
}
