import * as z from 'zod/mini'
import { type Author, type Draft, DraftEnvelope } from './entry.ts'
import { definitionOf, isKind, versionOf } from './registry.ts'
import { type IllFormed, illFormedIn } from './well-formed.ts'

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
      faults: [{ field: 'kind', found: kind, allowed: 'a kind of entry that this server knows' }],
    }
  const definition = definitionOf(kind)
  const present = versionOf(kind)
  if (version > present)
    return {
      ok: false,
      newer: true,
      faults: [{ field: 'version', found: String(version), allowed: `${present} or older` }],
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
        found: 'an unknown field',
        allowed: 'no such field; check its spelling',
      }))
    return [{ field, found: shown(path.reduce<unknown>(step, input)), allowed: allowedBy(issue) }]
  })

const illFormedFault = ({ path, why }: IllFormed): DraftFault =>
  why === 'too-deep'
    ? {
        field: path.slice(0, 6).join('.'),
        found: 'more levels than that',
        allowed: 'lists and objects up to 40 levels deep',
      }
    : {
        field: path.join('.') || 'entry',
        found: why === 'nul' ? 'a NUL character' : 'half of a character',
        allowed: 'text of whole characters, without NUL',
      }

const step = (value: unknown, key: string): unknown =>
  value !== null && typeof value === 'object' ? (value as Record<string, unknown>)[key] : undefined

const shown = (value: unknown): string => {
  const text = value === undefined ? 'nothing' : JSON.stringify(value)
  return text.length > 80 ? `${text.slice(0, 77)}...` : text
}

const allowedBy = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected === 'nonoptional' ? 'a value' : `${issue.expected}`
    case 'invalid_value':
      return `one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`
    case 'too_small':
      return `${issue.origin === 'number' || issue.origin === 'int' ? '' : 'length '}${issue.minimum} or more`
    case 'too_big':
      return `${issue.origin === 'number' || issue.origin === 'int' ? '' : 'length '}${issue.maximum} or less`
    case 'invalid_format':
      return `text of the form ${issue.format}`
    default:
      return issue.message || 'another form'
  }
}
