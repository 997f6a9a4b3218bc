import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { torquedBy } from '../../questions/gates.ts'
import { isSamePerson } from '../../same-person.ts'
import { admitRound } from './admit-round.ts'
import type { torqueKinds } from './kinds.ts'

export const torqueRules: Rules<keyof typeof torqueKinds> = {
  'studs.torqued': [(state, draft, facts) => admitRound(state, draft.payload, facts)],
  'torque.checked': [
    (state, draft, facts) => admitRound(state, draft.payload, facts),
    (state, draft, facts) =>
      facts.secondPersonRequired &&
      torquedBy(state.work[draft.payload.wheel]).some((doer) => isSamePerson(doer, draft.writtenBy))
        ? refuse('SECOND_PERSON_IS_DOER', { to: 'check-torque' })
        : null,
  ],
}
