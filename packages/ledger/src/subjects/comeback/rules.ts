import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import type { comebackKinds } from './kinds.ts'

export const comebackRules: Rules<keyof typeof comebackKinds> = {
  'comeback.judged': [
    (state) => (state.opened?.comebackOf ? null : refuse('COMEBACK_NOT_JUDGED', { why: 'no-comeback' })),
    // Before anybody has looked, a cause would be a guess.
    ({ diagnosis }) =>
      diagnosis?.confirmed && !diagnosis.outdated
        ? null
        : refuse('COMEBACK_NOT_JUDGED', { why: 'findings-unconfirmed' }),
    (_state, { payload: { cause, words } }) =>
      cause === 'something-else' && words === null
        ? refuse('COMEBACK_NOT_JUDGED', { why: 'words-missing' })
        : null,
  ],
}
