import { nextSteps } from '@bayledger/ledger/questions/next-steps'
import type { OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import { nextStepWords } from '@bayledger/wording/next-steps'

/** "Do this next" as the report prints it. */
export const nextLines = (state: OrderState): string[] =>
  nextSteps(state).map((step) => nextStepWords(english.nextSteps, step))
