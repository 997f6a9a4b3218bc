import type { OrderState } from '@bayledger/ledger/state'
import { composeReportContent, type ReportContext } from '@bayledger/report/compose-content'
import type { SigningIdentity } from '../../../deps.ts'
import type { SealTask } from './seal-in-worker.ts'

/** What is drawn and signed of an order's state; it is signed at the moment at which it was composed. */
export const sealTaskOf = (
  state: OrderState,
  signing: SigningIdentity,
  context: ReportContext,
): SealTask => ({
  content: composeReportContent(state, context),
  signing,
  reason: context.language.reports.sealReason,
  signedAt: context.composedAt,
  roomForStamp: context.stamp?.is === 'within',
})
