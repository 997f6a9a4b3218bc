import type { Evidence } from '@bayledger/reckoning/evidence/evidence'
import type { OrderState } from '../state.ts'

type NotPossible = NonNullable<Evidence['notPossible']>

/**
 * What was skipped with a reason and is still not known: the newest reason of each field. What was recorded after all
 * needs no reason.
 */
export const skippedChecks = ({ skippedChecks: skips }: OrderState, evidence: Evidence): NotPossible => {
  const newest = new Map(skips.map(({ field, why }) => [field, why]))
  return [...newest].flatMap(([field, why]) => (hasFact(evidence, field) ? [] : [{ field, why }]))
}

/** Whether the evidence says anything of a field, such as `wheels.RR.stem` or `events.collision`. */
export const hasFact = (evidence: Evidence, field: string): boolean => {
  const path = field.split('.')
  const [group, name, member] = path
  if (group === 'events')
    return (evidence.events ?? []).some(
      (event) => event.kind === name && (member === undefined || event.wheel != null),
    )
  let node: unknown = evidence
  for (const part of path) node = (node as Readonly<Record<string, unknown>> | null | undefined)?.[part]
  return node !== null && node !== undefined
}
