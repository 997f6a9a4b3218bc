import type { OrderState } from '@bayledger/ledger/state'
import { answersSection } from './compose/answers.ts'
import { arrivalSection } from './compose/arrival-section.ts'
import type { ReportContext, ReportStamp } from './compose/context.ts'
import { clockWords } from './compose/figures.ts'
import { findingsSection } from './compose/findings-section.ts'
import { genuineSection } from './compose/genuine-section.ts'
import { moneySection } from './compose/money-section.ts'
import { ownWordsSections } from './compose/own-words-section.ts'
import { composePageOne } from './compose/page-one.ts'
import { peopleSection } from './compose/people-section.ts'
import { photosSection } from './compose/photos-section.ts'
import { pressureSection } from './compose/pressure-section.ts'
import { proofSection } from './compose/proof-section.ts'
import { readingsSection } from './compose/readings-section.ts'
import { torqueSection } from './compose/torque-section.ts'
import { workSection } from './compose/work-section.ts'
import type { ReportContent } from './content.ts'

export type { ReportContext, ReportStamp }

/**
 * Says in words and figures what an order's ledger holds up to its head. Pure: the same state and context give
 * the same content. A fact that is absent is said to be absent; nothing is ever filled in.
 */
export const composeReportContent = (state: OrderState, context: ReportContext): ReportContent => ({
  language: context.language.code,
  reportNumber: context.reportNumber,
  orderNumber: state.opened?.orderNumber ?? context.language.report.cells.notNumbered,
  head: { seq: state.seq, hash: state.headHash },
  composedAt: context.composedAt,
  composedAtWords: clockWords(context, context.composedAt, context.timeZone),
  timeZone: context.timeZone,
  checkAddress: context.checkAddress,
  templateVersion: context.templateVersion,
  supersedes: context.supersedes,
  pageOne: composePageOne(state, context),
  sections: [
    arrivalSection(state, context),
    readingsSection(state, context, 'arrival'),
    findingsSection(state, context),
    workSection(state, context),
    torqueSection(state, context),
    pressureSection(state, context),
    proofSection(state, context),
    readingsSection(state, context, 'closing'),
    photosSection(state, context),
    answersSection(state, context),
    moneySection(state, context),
    peopleSection(state, context),
    ...ownWordsSections(context),
    genuineSection(state, context),
  ],
})
