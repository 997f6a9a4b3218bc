import type { NextStep } from '@bayledger/ledger/questions/next-steps'

/** What the customer does after the visit, one sentence for each code. */
export type NextStepsWording = {
  readonly [Code in NextStep['code']]: (step: Extract<NextStep, { readonly code: Code }>) => string
}

/** "Check all pressures once a month with cold tires, against the door label." */
export const nextStepWords = (words: NextStepsWording, step: NextStep): string => {
  const say = words[step.code] as (step: NextStep) => string
  return say(step)
}
