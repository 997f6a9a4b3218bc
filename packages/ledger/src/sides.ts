import * as z from 'zod/mini'
import { canonicalText, sha256Hex } from './digests.ts'
import type { Kind } from './registry.ts'
import { definitionOf, versionOf } from './registry.ts'
import { markers, type SideKind, sideKinds } from './side-kinds.ts'

/** A side that a payload names: its kind, and the digest that represents it. */
export type NamedSide = { readonly side: SideKind; readonly digest: string }

type Written = { readonly kind: Kind; readonly version: number; readonly payload: unknown }

/** The schema that an entry was written by: that of its own version. */
const schemaOf = ({ kind, version }: Pick<Written, 'kind' | 'version'>): z.core.$ZodType => {
  const { payload, earlier } = definitionOf(kind)
  return version < versionOf(kind) ? (earlier[version - 1]?.payload ?? payload) : payload
}

/** The sides that an entry names, found by walking the schema of its version: a new kind needs no list here. */
export const sidesNamedIn = (entry: Written): NamedSide[] => namedIn(schemaOf(entry), entry.payload)

/** The kinds of side that any version of a kind may name, in the order of `sideKinds`. */
export const sideKindsOf = (kind: Kind): SideKind[] => {
  const { payload, earlier } = definitionOf(kind)
  const found = new Set([payload, ...earlier.map((version) => version.payload)].flatMap(kindsIn))
  return sideKinds.filter((side) => found.has(side))
}

/** The money that an entry of a first version holds inline, by the digests that replace it after its upcast. */
export const inlineMoneyIn = ({ kind, version, payload }: Written): ReadonlyMap<string, string> => {
  const inline = definitionOf(kind).earlier[version - 1]?.inlineMoney
  const texts = inline ? inline(payload as never).map(canonicalText) : []
  return new Map(texts.map((text) => [sha256Hex(text), text]))
}

/** Whether an entry's own version holds prices inline, as some first versions did. */
export const holdsMoneyInline = ({ kind, version }: Pick<Written, 'kind' | 'version'>): boolean =>
  definitionOf(kind).earlier[version - 1]?.inlineMoney != null

const markedAs = (schema: z.core.$ZodType): SideKind | undefined =>
  sideKinds.find((side) => markers[side] === schema)

const defOf = (schema: z.core.$ZodType) => (schema._zod as z.core.$ZodTypes['_zod']).def

const sided = new WeakMap<z.core.$ZodType, boolean>()

/** Whether anything in a schema names a side. Most of a payload does not, and is not walked again for every entry. */
const mayName = (schema: z.core.$ZodType): boolean => {
  const known = sided.get(schema)
  if (known !== undefined) return known
  const may = kindsIn(schema).length > 0
  sided.set(schema, may)
  return may
}

const namedIn = (schema: z.core.$ZodType, value: unknown): NamedSide[] => {
  if (!mayName(schema)) return []
  const side = markedAs(schema)
  if (side) return typeof value === 'string' ? [{ side, digest: value }] : []
  if (value === null || value === undefined) return []
  const def = defOf(schema)
  switch (def.type) {
    case 'object':
      return Object.entries(def.shape).flatMap(([key, member]) =>
        namedIn(member, (value as Record<string, unknown>)[key]),
      )
    case 'array':
      return (value as unknown[]).flatMap((member) => namedIn(def.element, member))
    case 'record':
      return Object.values(value).flatMap((member) => namedIn(def.valueType, member))
    case 'union':
      return def.options
        .filter((option) => z.safeParse(option, value).success)
        .flatMap((option) => namedIn(option, value))
    case 'nullable':
    case 'optional':
      return namedIn(def.innerType, value)
    default:
      return []
  }
}

const kindsIn = (schema: z.core.$ZodType): SideKind[] => {
  const side = markedAs(schema)
  if (side) return [side]
  const def = defOf(schema)
  switch (def.type) {
    case 'object':
      return Object.values(def.shape).flatMap(kindsIn)
    case 'array':
      return kindsIn(def.element)
    case 'record':
      return kindsIn(def.valueType)
    case 'union':
      return def.options.flatMap(kindsIn)
    case 'nullable':
    case 'optional':
      return kindsIn(def.innerType)
    default:
      return []
  }
}
