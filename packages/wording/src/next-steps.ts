import type { NextStep } from '@bayledger/ledger/questions/next-steps'

/** Whom a customer calls or asks for; `null` where the shop has set no number or the order names nobody. */
export type Contact = { readonly telephone: string | null; readonly person: string | null }

/** What the customer does after the visit, one sentence or a few for each code. */
export type NextStepsWording = {
  readonly [Code in NextStep['code']]: (
    step: Extract<NextStep, { readonly code: Code }>,
    contact: Contact,
  ) => string
}

/** "Check all pressures with a gauge once a month, the first time by Feb 12, 2026: …" */
export const nextStepWords = (words: NextStepsWording, step: NextStep, contact: Contact): string => {
  const say = words[step.code] as (step: NextStep, contact: Contact) => string
  return say(step, contact)
}
