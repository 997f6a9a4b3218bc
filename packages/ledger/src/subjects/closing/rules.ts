import { wheelNames } from '@bayledger/reckoning/wheels'
import { type Refusal, refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { brokenSensors, handBackGate, insecureWheels, sealGate } from '../../questions/gates.ts'
import { proofOf } from '../../questions/proof.ts'
import { definitionOf } from '../../registry.ts'
import { isSamePerson } from '../../same-person.ts'
import type { OrderState } from '../../state.ts'
import type { closingKinds } from './kinds.ts'

/** An order may end in words only while the vehicle could stand on the road as it came. */
const stands = (state: OrderState): Refusal | null => {
  const [wheel] = insecureWheels(state)
  if (wheel)
    return refuse(
      'WHEEL_NOT_SECURED',
      `The ${wheelNames[wheel]} wheel is off, untorqued or unchecked. Put it on, torque it and let a second person check it first.`,
    )
  const [broken] = brokenSensors(state)
  return broken
    ? refuse(
        'SENSOR_BROKEN_OPEN',
        `The working ${wheelNames[broken]} sensor was broken in our hands. Fit another one first; the vehicle stays until then.`,
      )
    : null
}

export const closingRules: Rules<keyof typeof closingKinds> = {
  'report.sealed': [
    (state, { payload }) =>
      payload.composedFrom.seq === state.seq && payload.composedFrom.hash === state.headHash
        ? null
        : refuse(
            'REPORT_HEAD_MOVED',
            'Something was written since the report was composed. Compose it again.',
          ),
    (state, { payload }) =>
      payload.supersedes === (state.reports.at(-1)?.reportNumber ?? null)
        ? null
        : refuse(
            'REPORT_SUPERSEDES_OTHER',
            'An addendum names the newest report of this order, and a first report names none. Compose it again.',
          ),
    (state) => {
      const [first] = sealGate(state)
      return first ? refuse('SEAL_GATE_CLOSED', `The report cannot be sealed yet. ${first.words}`) : null
    },
  ],
  'order.handed_back': [
    (state) =>
      state.reports.length > 0
        ? null
        : refuse('REPORT_NOT_SEALED', 'Seal the report first; the customer takes it along.'),
    (state) => {
      const [first] = handBackGate(state)
      return first
        ? refuse('HAND_BACK_GATE_CLOSED', `The vehicle may not be handed back. ${first.words}`)
        : null
    },
    (state, draft, facts) => {
      if (proofOf(state).verdict !== 'not-yet-proven') return null
      const agreed = draft.payload.releaseAgreedBy
      const other = draft.writtenBy.kind === 'staff' && agreed !== draft.writtenBy.staffId
      return agreed !== null && facts.staff.has(agreed) && other
        ? null
        : refuse(
            'RELEASE_NOT_AGREED',
            'The cure is not proven yet. A second person agrees to the release before the keys go out.',
          )
    },
  ],
  'order.refused': [stands],
  'order.withdrawn': [stands],
  'entry.struck': [
    (state, draft, facts) => {
      const target = state.marks.find((mark) => mark.entryId === draft.payload.entryId)
      if (!target) return refuse('STRIKE_TARGET_UNKNOWN', 'The entry to withdraw is not in this order.')
      if (target.struck) return refuse('STRIKE_ALREADY_STRUCK', 'That entry is already withdrawn.')
      const { strikable } = definitionOf(target.kind)
      if (strikable === 'no')
        return refuse(
          'STRIKE_NOT_ALLOWED',
          'This kind of entry cannot be withdrawn: consents, seals and what the server wrote stand for good.',
        )
      if (draft.payload.reason === 'undone') {
        if (!isSamePerson(target.by, draft.writtenBy))
          return refuse(
            'STRIKE_NOT_OWN',
            'Only the person who wrote an entry can undo it. Withdraw it with a reason instead.',
          )
        if (strikable === 'second-person')
          return refuse(
            'STRIKE_NEEDS_SECOND_PERSON',
            'A sealed torque, a second check or a wheel that came off cannot be undone. Withdraw it with a second person.',
          )
      }
      if (strikable === 'second-person') {
        const second = draft.payload.secondPersonId
        if (second === null)
          return refuse(
            'STRIKE_NEEDS_SECOND_PERSON',
            'Withdrawing this takes a second person. Let them confirm with their PIN.',
          )
        if (!facts.staff.has(second))
          return refuse('SECOND_PERSON_UNKNOWN', "The second person is not among this shop's people.")
        if (draft.writtenBy.kind === 'staff' && second === draft.writtenBy.staffId)
          return refuse('SECOND_PERSON_IS_DOER', 'The second person must be somebody else.')
      }
      return null
    },
  ],
}
