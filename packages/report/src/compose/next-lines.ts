import { nextSteps } from '@bayledger/ledger/questions/next-steps'
import type { OrderState } from '@bayledger/ledger/state'
import { nextStepWords } from '@bayledger/wording/next-steps'
import type { ReportContext } from './context.ts'
import { dayOf } from './figures.ts'
import { authorName } from './people.ts'

/** "Do this next" as the report prints it, with the number to call and whom to ask for. */
export const nextLines = (state: OrderState, context: ReportContext): string[] => {
  const contact = {
    telephone: context.shop.telephone,
    person: state.opened ? authorName(context, state.opened.written.by) : null,
  }
  return nextSteps(state, dayOf(context.composedAt, context.timeZone)).map((step) =>
    nextStepWords(context.language.nextSteps, step, contact),
  )
}
