import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { sealsOf, torquedBy } from '../../questions/gates.ts'
import { isSoleWorker, soleWorkerMinutes } from '../../questions/sole-worker.ts'
import { isSamePerson } from '../../same-person.ts'
import { admitRound } from './admit-round.ts'
import type { torqueKinds } from './kinds.ts'

export const torqueRules: Rules<keyof typeof torqueKinds> = {
  'studs.torqued': [(state, draft, facts) => admitRound(state, draft.payload, facts)],
  'torque.checked': [
    (state, draft, facts) => admitRound(state, draft.payload, facts),
    (state, draft, facts) => {
      const { wheel, checkedBy } = draft.payload
      if (checkedBy === null) return refuse('SECOND_PERSON_UNPROVEN', {})
      const checker = { kind: 'staff' as const, staffId: checkedBy.staffId }
      const work = state.work[wheel]
      const isDoer = torquedBy(work).some((doer) => isSamePerson(doer, checker))
      if (!isDoer || !facts.secondPersonRequired) return null
      if (!isSoleWorker(checker, facts)) return refuse('SECOND_PERSON_IS_DOER', { to: 'check-torque' })
      const torquedAt = Math.max(...sealsOf(work).map(({ written }) => Date.parse(written.writtenAt)))
      return Date.parse(draft.writtenAt) - torquedAt >= soleWorkerMinutes * 60_000
        ? null
        : refuse('SOLE_WORKER_TOO_SOON', { minutes: soleWorkerMinutes })
    },
  ],
}
