import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import type { troubleKinds } from './kinds.ts'

export const troubleRules: Rules<keyof typeof troubleKinds> = {
  'trouble.found': [
    (_state, { payload: { wheel, what } }) =>
      wheel === null && what !== 'other' ? refuse('TROUBLE_WITHOUT_WHEEL', {}) : null,
  ],
}
