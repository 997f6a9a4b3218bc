import type { Evidence } from '../../evidence/evidence-schema.ts'

/** Whether a field, or a part of the evidence that holds it, was recorded as not possible to check. */
export const isNotPossible = (evidence: Evidence, field: string): boolean =>
  (evidence.notPossible ?? []).some((noted) => field === noted.field || field.startsWith(`${noted.field}.`))
