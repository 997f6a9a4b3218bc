import type { Draft, Entry } from '@bayledger/ledger/entry'
import { definitionOf } from '@bayledger/ledger/registry'
import { PersonalDigest } from '@bayledger/ledger/text'
import * as z from 'zod/mini'

/** The digests in an entry that stand for personal words, found by its kind's schema: a new kind needs no list here. */
export const findPersonalDigests = (draft: Draft | Entry): string[] =>
  digestsIn(definitionOf(draft.kind).payload, draft.payload)

const digestsIn = (schema: z.core.$ZodType, value: unknown): string[] => {
  if (schema === PersonalDigest) return typeof value === 'string' ? [value] : []
  if (value === null || value === undefined) return []
  const { def } = schema._zod as z.core.$ZodTypes['_zod']
  switch (def.type) {
    case 'object':
      return Object.entries(def.shape).flatMap(([key, member]) =>
        digestsIn(member, (value as Record<string, unknown>)[key]),
      )
    case 'array':
      return (value as unknown[]).flatMap((member) => digestsIn(def.element, member))
    case 'union':
      return def.options
        .filter((option) => z.safeParse(option, value).success)
        .flatMap((option) => digestsIn(option, value))
    case 'nullable':
    case 'optional':
      return digestsIn(def.innerType, value)
    default:
      return []
  }
}
