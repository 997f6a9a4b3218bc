import type { Draft, DraftOfKind } from '@bayledger/ledger/entry'
import { authorizedWorks, plansRuledOutRepair } from '@bayledger/ledger/questions/authorized-works'
import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import { planLacksSpare } from '@bayledger/ledger/questions/spare-on'
import { planLacksCare, tireDangers } from '@bayledger/ledger/questions/tire-dangers'
import { versionOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { v7 as newId } from 'uuid'

/**
 * The job plan that follows from a customer's answers: written by the server itself with the decision, all or
 * nothing, so that no bay ever works from yesterday's answers. A new version of the estimate that changes what was
 * authorized needs another answer; until then its steps leave the plan. New findings that make a tire dangerous to open
 * or to fill put its purge or its look inside into the plan at once, and a hole that turns out to be beyond repair takes
 * its repair out. A refusal on record with which the vehicle leaves on its spare brings the spare's steps. A sheet on which
 * a figure was entered or verified since brings that figure to its steps; what was closed stays closed.
 */
export const planAfterDecision = (
  state: OrderState,
  decision: Draft,
  at: string,
): DraftOfKind<'plan.issued'> | null => {
  const sheet = state.sheet?.sheet
  if (!sheet || !changesThePlan(state, decision)) return null
  const works = authorizedWorks(state)
  const planVersion = (state.plan?.plan.planVersion ?? 0) + 1
  return {
    id: newId(),
    shopId: decision.shopId,
    orderId: decision.orderId,
    kind: 'plan.issued',
    version: versionOf('plan.issued'),
    payload: {
      plan: planJob(sheet, works, planVersion, tireDangers(state)),
      decisionId: decision.kind === 'estimate.decided' ? decision.id : null,
    },
    restsOn: [decision.id],
    writtenBy: { kind: 'system' },
    deviceId: null,
    writtenAt: at,
  }
}

const changesThePlan = (state: OrderState, { kind }: Draft): boolean => {
  if (kind === 'estimate.decided') return true
  if (kind === 'sheet.chosen') return state.plan !== null
  if (kind === 'refusal.recorded') return planLacksSpare(state)
  if (kind === 'diagnosis.issued') return planLacksCare(state) || plansRuledOutRepair(state)
  if (kind !== 'estimate.issued') return false
  const authorized = new Set(authorizedBundles(state).map(({ bundleKey }) => bundleKey))
  return (state.plan?.plan.steps ?? []).some(
    ({ bundleKey }) => bundleKey !== null && !authorized.has(bundleKey),
  )
}
