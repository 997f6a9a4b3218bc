import * as z from 'zod/mini'
import { type Author, type Draft, DraftEnvelope } from './entry.ts'
import { definitionOf, isKind, versionOf } from './registry.ts'
import { type IllFormed, illFormedIn } from './well-formed.ts'
import { draftWords, illFormedWords } from './words.ts'

/** One fault of a draft: the field, what was found, what is allowed. */
export type DraftFault = { readonly field: string; readonly found: string; readonly allowed: string }

export type ParsedDraft =
  | { readonly ok: true; readonly draft: Draft }
  | { readonly ok: false; readonly faults: readonly DraftFault[] }
  /** A newer device wrote it: the server replies "not yet", and the draft stays in the device's outbox. */
  | { readonly ok: false; readonly newer: true; readonly faults: readonly DraftFault[] }

/** Reads a draft from anything a device may send. It names every fault and never drops an unknown field silently. */
export const parseDraft = (
  input: unknown,
  sender: { readonly shopId: string; readonly writtenBy: Author; readonly deviceId: string | null },
): ParsedDraft => {
  const illFormed = illFormedIn(input)
  if (illFormed.length > 0) return { ok: false, faults: illFormed.map(illFormedFault) }
  const envelope = z.safeParse(DraftEnvelope, input)
  if (!envelope.success) return { ok: false, faults: faultsOf(envelope.error.issues, input, '') }
  const { kind, version, payload } = envelope.data
  if (!isKind(kind))
    return {
      ok: false,
      newer: true,
      faults: [{ field: 'kind', found: kind, allowed: draftWords.knownKind }],
    }
  const definition = definitionOf(kind)
  const present = versionOf(kind)
  if (version > present)
    return {
      ok: false,
      newer: true,
      faults: [{ field: 'version', found: String(version), allowed: draftWords.atMostVersion(present) }],
    }
  const schema = version === present ? definition.payload : definition.earlier[version - 1]?.payload
  const parsed = z.safeParse(schema ?? definition.payload, payload)
  if (!parsed.success) return { ok: false, faults: faultsOf(parsed.error.issues, payload, 'payload') }
  return { ok: true, draft: { ...envelope.data, ...sender, payload: parsed.data } as Draft }
}

const faultsOf = (issues: readonly z.core.$ZodIssue[], input: unknown, prefix: string): DraftFault[] =>
  issues.flatMap((issue) => {
    const path = issue.path.map(String)
    const field = [prefix, ...path].filter((part) => part !== '').join('.') || 'entry'
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        field: `${field === 'entry' ? '' : `${field}.`}${key}`,
        ...draftWords.unknownField,
      }))
    return [{ field, found: shown(path.reduce<unknown>(step, input)), allowed: allowedBy(issue) }]
  })

const illFormedFault = ({ path, why }: IllFormed): DraftFault => ({
  field: (why === 'too-deep' ? path.slice(0, 6) : path).join('.') || 'entry',
  ...illFormedWords[why],
})

const step = (value: unknown, key: string): unknown =>
  value !== null && typeof value === 'object' ? (value as Record<string, unknown>)[key] : undefined

const shown = (value: unknown): string => {
  const text = value === undefined ? draftWords.nothing : JSON.stringify(value)
  return text.length > 80 ? `${text.slice(0, 77)}...` : text
}

const allowedBy = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected === 'nonoptional' ? draftWords.value : `${issue.expected}`
    case 'invalid_value':
      return draftWords.oneOf(issue.values.map((value) => JSON.stringify(value)))
    case 'too_small':
      return draftWords.atLeast(issue.origin, issue.minimum)
    case 'too_big':
      return draftWords.atMost(issue.origin, issue.maximum)
    case 'invalid_format':
      return draftWords.form(issue.format)
    default:
      return issue.message || draftWords.anotherForm
  }
}
