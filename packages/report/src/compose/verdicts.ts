import { isFixed, mayDrive } from '@bayledger/ledger/questions/verdicts'
import type { OrderState } from '@bayledger/ledger/state'
import { fixedWords } from '@bayledger/wording/verdicts'
import type { PageOne } from '../content.ts'
import type { Spoken } from './spoken.ts'

/** "Can I drive it?" as the report prints it. */
export const canDrive = (state: OrderState, context: Spoken): PageOne['canDrive'] => {
  const answer = mayDrive(state)
  return { answer, words: context.language.verdicts.drive[answer] }
}

/** "Is it fixed?" as the report prints it: one word, and how we know. */
export const fixed = (state: OrderState, context: Spoken): PageOne['fixed'] =>
  fixedWords(context.language.verdicts, isFixed(state))
