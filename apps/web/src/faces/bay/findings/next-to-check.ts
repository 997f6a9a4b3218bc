import type { OrderState } from '@bayledger/ledger/state'
import type { Diagnosis, NextCheck } from '@bayledger/reckoning/diagnosis/diagnosis'
import { type ArrivalTask, taskOfField } from '../../../features/arrival/arrival-tasks.ts'

type NextToCheck = {
  /** The most valuable check that can be recorded here. */
  readonly here: { readonly task: ArrivalTask; readonly check: NextCheck } | null
  /** A check that is worth more but needs paperwork: the desk looks it up. */
  readonly atDesk: NextCheck | null
}

/** No pressure can be judged or set before somebody has read the door label, and after it another person. */
const readLabel = {
  task: { what: 'door-label' },
  check: { field: 'vehicle.placard.verified', couldChange: [], verdicts: 2, seconds: 30 },
} satisfies NonNullable<NextToCheck['here']>

/** The rules rank the facts worth checking; the first one with a pad here is for the bay. The door label comes before all. */
export const nextToCheck = (
  { findings, nextChecks }: Pick<Diagnosis, 'findings' | 'nextChecks'>,
  tires: OrderState['arrival']['tires'],
): NextToCheck => {
  if (findings.some(({ code }) => code === 'placard-unverified')) return { here: readLabel, atDesk: null }
  const ranked = nextChecks.map((check) => ({ check, task: taskOfField(check.field, tires) }))
  const [first] = ranked
  const here = ranked.find(({ task }) => task !== null)
  return {
    here: here?.task ? { task: here.task, check: here.check } : null,
    atDesk: first && first.task === null ? first.check : null,
  }
}
