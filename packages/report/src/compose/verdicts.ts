import { isFixed, mayDrive } from '@bayledger/ledger/questions/verdicts'
import type { OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import { fixedWords } from '@bayledger/wording/verdicts'
import type { PageOne } from '../content.ts'

/** "Can I drive it?" as the report prints it. */
export const canDrive = (state: OrderState): PageOne['canDrive'] => {
  const answer = mayDrive(state)
  return { answer, words: english.verdicts.drive[answer] }
}

/** "Is it fixed?" as the report prints it: one word, and how we know. */
export const fixed = (state: OrderState): PageOne['fixed'] => fixedWords(english.verdicts, isFixed(state))
