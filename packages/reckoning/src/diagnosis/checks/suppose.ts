import type { EventEvidence, EventKind, Evidence } from '../../evidence/evidence-schema.ts'
import type { Supposition } from './field-check.ts'

type Node = Readonly<Record<string, unknown>>

/** The evidence as it would be if its fields had the supposed values. A field `events.<kind>` adds that event. */
export const suppose = (evidence: Evidence, supposition: Supposition): Evidence =>
  Object.entries(supposition).reduce<Evidence>((supposed, [field, value]) => {
    const [first, second, ...rest] = field.split('.')
    if (first !== 'events' || second === undefined)
      return placed(supposed, field.split('.'), value) as Evidence
    return rest[0] === 'wheel'
      ? withEventWheel(supposed, second as EventKind, value as EventEvidence['wheel'])
      : {
          ...supposed,
          events: [...(supposed.events ?? []), { kind: second as EventKind, ...(value as object) }],
        }
  }, evidence)

const placed = (node: unknown, [name, ...rest]: readonly string[], value: unknown): unknown => {
  if (name === undefined) return value
  const held: Node = typeof node === 'object' && node !== null ? (node as Node) : {}
  return { ...held, [name]: placed(held[name], rest, value) }
}

const withEventWheel = (evidence: Evidence, kind: EventKind, wheel: EventEvidence['wheel']): Evidence => ({
  ...evidence,
  events: (evidence.events ?? []).map((event) => (event.kind === kind ? { ...event, wheel } : event)),
})
