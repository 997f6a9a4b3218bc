import type { OrderState } from '@bayledger/ledger/state'
import type { NextCheck } from '@bayledger/reckoning/diagnosis/diagnosis'
import { type ArrivalTask, taskOfField } from '../../../features/arrival/arrival-tasks.ts'

type NextToCheck = {
  /** The most valuable check that can be recorded here. */
  readonly here: { readonly task: ArrivalTask; readonly check: NextCheck } | null
  /** A check that is worth more but needs paperwork: the desk looks it up. */
  readonly atDesk: NextCheck | null
}

/** The rules rank the facts worth checking; the first one with a pad here is for the bay. */
export const nextToCheck = (
  nextChecks: readonly NextCheck[],
  tires: OrderState['arrival']['tires'],
): NextToCheck => {
  const ranked = nextChecks.map((check) => ({ check, task: taskOfField(check.field, tires) }))
  const [first] = ranked
  const here = ranked.find(({ task }) => task !== null)
  return {
    here: here?.task ? { task: here.task, check: here.check } : null,
    atDesk: first && first.task === null ? first.check : null,
  }
}
