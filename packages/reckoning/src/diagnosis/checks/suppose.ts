import type { EventEvidence, EventKind, Evidence } from '../../evidence/evidence-schema.ts'
import type { Supposition } from './field-check.ts'

type Node = Readonly<Record<string, unknown>>

/** The evidence as it would be if its fields had the supposed values. A field `events.<kind>` adds that event. */
export const suppose = (evidence: Evidence, supposition: Supposition): Evidence => {
  let supposed = evidence
  for (const [field, value] of Object.entries(supposition))
    supposed = withField(supposed, field.split('.'), value)
  return supposed
}

const withField = (evidence: Evidence, path: readonly string[], value: unknown): Evidence => {
  if (path[0] !== 'events') return placed(evidence, path, value) as Evidence
  const kind = path[1] as EventKind
  if (path[2] === 'wheel') return withEventWheel(evidence, kind, value as EventEvidence['wheel'])
  return { ...evidence, events: [...(evidence.events ?? []), { kind, ...(value as object) }] }
}

const placed = (node: unknown, [name, ...rest]: readonly string[], value: unknown): unknown => {
  if (name === undefined) return value
  const held: Node = typeof node === 'object' && node !== null ? (node as Node) : {}
  return { ...held, [name]: placed(held[name], rest, value) }
}

const withEventWheel = (evidence: Evidence, kind: EventKind, wheel: EventEvidence['wheel']): Evidence => ({
  ...evidence,
  events: (evidence.events ?? []).map((event) => (event.kind === kind ? { ...event, wheel } : event)),
})
