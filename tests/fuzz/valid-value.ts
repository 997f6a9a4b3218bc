import fc from 'fast-check'
import type { Chance } from '../simulate/chance.ts'
import type { KnownValues } from './known-values.ts'
import type { JsonSchema } from './operations.ts'

export type Drawing = {
  readonly chance: Chance
  readonly known: KnownValues
  /** The service's time, about which instants lie. */
  readonly now: () => number
  /** The path of the operation: what is known of it comes first. */
  readonly path: string
}

/** A new UUID, version 4, from the seed. */
export const newIdFrom = (chance: Chance): string => {
  const hex = Array.from({ length: 4 }, () => chance.word().toString(16).padStart(8, '0')).join('')
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20)}`
}

/** A value that the schema admits, as far as a schema says it; `name` is the field that it is for. */
export const validValue = (
  drawing: Drawing,
  schema: JsonSchema,
  name: string,
  root: JsonSchema = schema,
  depth = 0,
): unknown => {
  const { chance, known, path } = drawing
  const again = (inner: JsonSchema, innerName = name) =>
    validValue(drawing, inner, innerName, root, depth + 1)
  if (typeof schema.$ref === 'string') return again(resolved(root, schema.$ref))
  if ('const' in schema) return schema.const
  if (Array.isArray(schema.enum)) return schema.enum[chance.below(schema.enum.length)]
  const branches = (schema.anyOf ?? schema.oneOf) as readonly JsonSchema[] | undefined
  if (branches) {
    // Beyond any depth that a form has, the first that ends.
    const ending = depth > 14 ? branches.find(({ type }) => type === 'null') : undefined
    const branch = ending ?? branches[chance.below(branches.length)]
    return branch ? again(branch) : null
  }
  switch (schema.type) {
    case 'null':
      return null
    case 'boolean':
      return chance.happens(0.5)
    case 'string':
      return textOf(drawing, schema, name)
    case 'integer':
    case 'number': {
      const told = chance.happens(0.3) ? known.one(chance, name, path) : undefined
      return typeof told === 'number' && fits(schema, told) ? told : numberOf(chance, schema)
    }
    case 'array': {
      const least = Number(schema.minItems ?? 0)
      const most = Math.max(least, Math.min(Number(schema.maxItems ?? 4), 4))
      const items = (schema.items ?? {}) as JsonSchema
      const count = least + chance.below(most - least + 1)
      return Array.from({ length: depth > 14 ? least : count }, () => again(items))
    }
    case 'object':
      return objectOf(drawing, schema, root, again, depth)
    default:
      return anything(chance)
  }
}

/** Members by which one record is told from another, so that no two may have the same. */
const ownNames: ReadonlySet<string> = new Set(['name', 'code', 'partNumber', 'signInName', 'vehicle'])

/** What was told, without members that this schema does not admit, and mostly under a name of its own. */
const fitted = (chance: Chance, schema: JsonSchema, value: unknown, root: JsonSchema): unknown => {
  if (typeof schema.$ref === 'string') return fitted(chance, resolved(root, schema.$ref), value, root)
  if (value === null || typeof value !== 'object') return value
  if (Array.isArray(value))
    return value.map((member) => fitted(chance, (schema.items ?? {}) as JsonSchema, member, root))
  const branches = ((schema.anyOf ?? schema.oneOf) as readonly JsonSchema[] | undefined) ?? [schema]
  const properties = branches.find((branch) => branch.properties)?.properties as
    | Record<string, JsonSchema>
    | undefined
  if (!properties) return value
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, member]): [string, unknown][] => {
      const inner = properties[name]
      if (!inner) return []
      if (typeof member === 'string' && ownNames.has(name) && chance.happens(0.6))
        return [[name, `${member}${chance.below(1_000)}`]]
      return [[name, fitted(chance, inner, member, root)]]
    }),
  )
}

/** So many objects are what the service told of one with these fields, where it has: no schema says all that must fit. */
const shareOfTold = 0.6

const resolved = (root: JsonSchema, reference: string): JsonSchema =>
  reference
    .split('/')
    .slice(1)
    .reduce<JsonSchema>((at, part) => (at[part] ?? {}) as JsonSchema, root)

const objectOf = (
  { chance, known }: Drawing,
  schema: JsonSchema,
  root: JsonSchema,
  again: (inner: JsonSchema, name?: string) => unknown,
  depth: number,
): object => {
  const required = new Set((schema.required ?? []) as readonly string[])
  const told = chance.happens(shareOfTold)
    ? known.object(chance, { must: [...required], may: Object.keys((schema.properties ?? {}) as object) })
    : undefined
  if (told) return fitted(chance, schema, told, root) as object
  const made: Record<string, unknown> = {}
  for (const [key, member] of Object.entries((schema.properties ?? {}) as Record<string, JsonSchema>))
    if (required.has(key) || (depth < 10 && chance.happens(0.6))) made[key] = again(member, key)
  const names = (schema.propertyNames as JsonSchema | undefined)?.enum as readonly string[] | undefined
  if (names || typeof schema.additionalProperties === 'object')
    for (let count = chance.below(3); count > 0; count -= 1)
      made[names?.[chance.below(names.length)] ?? `key${count}`] = again(
        (schema.additionalProperties ?? {}) as JsonSchema,
      )
  return made
}

const fits = (schema: JsonSchema, value: number): boolean =>
  (typeof schema.minimum !== 'number' || value >= schema.minimum) &&
  (typeof schema.maximum !== 'number' || value <= schema.maximum) &&
  (schema.type === 'number' || Number.isInteger(value))

const numberOf = (chance: Chance, schema: JsonSchema): number => {
  const least = Number(schema.minimum ?? schema.exclusiveMinimum ?? 0)
  const most = Math.min(Number(schema.maximum ?? 100), Number.MAX_SAFE_INTEGER)
  const step = Number(schema.multipleOf ?? (schema.type === 'integer' ? 1 : 0.5))
  if (chance.happens(0.2)) return chance.pick([least, most])
  const within = least + (Math.min(most, least + 200) - least) * (chance.below(1000) / 1000)
  return Math.min(most, Math.max(least, Math.round(within / step) * step))
}

const textOf = (drawing: Drawing, schema: JsonSchema, name: string): string => {
  const { chance, known, path } = drawing
  const patterns = [schema, ...((schema.allOf ?? []) as readonly JsonSchema[])].flatMap(({ pattern }) =>
    typeof pattern === 'string' ? [new RegExp(pattern, 'u')] : [],
  )
  const admits = (text: string): boolean =>
    text.length >= Number(schema.minLength ?? 0) &&
    text.length <= Number(schema.maxLength ?? 100_000) &&
    patterns.every((pattern) => pattern.test(text))
  const told = chance.happens(0.75) ? known.one(chance, name, path) : undefined
  if (told !== undefined && admits(String(told))) return String(told)
  if (schema.format === 'uuid') return newIdFrom(chance)
  const usual = usualTexts(drawing).filter(admits)
  if (usual.length > 0) return usual[chance.below(usual.length)] ?? ''
  const [pattern] = patterns
  if (!pattern) return 'x'.repeat(Number(schema.minLength ?? 1))
  return fc.sample(fc.stringMatching(pattern), { seed: chance.word(), numRuns: 1 })[0] ?? ''
}

/** What people and devices of a shop write, in all its forms. */
const usualTexts = ({ chance, now }: Drawing): string[] => {
  const hex = Array.from({ length: 8 }, () => chance.word().toString(16).padStart(8, '0')).join('')
  const at = new Date(now() - chance.below(48) * 1_800_000)
  return [
    'A. Name',
    'José Ñandú 🔧',
    'all four are low, the light came on this morning',
    'LF',
    'front',
    'CT-12',
    '402817',
    '+1 555 0100',
    '+15550100',
    'someone@shop.example',
    '1A2B3C4D',
    '08:00',
    '08:00-17:30',
    '11-15',
    '2026-04',
    'P215/60R16',
    'America/New_York',
    hex,
    Buffer.from(hex, 'hex').toString('base64'),
    at.toISOString(),
    at.toISOString().slice(0, 10),
    String(chance.below(40)),
  ]
}

const anything = (chance: Chance): unknown =>
  chance.pick<() => unknown>([
    () => null,
    () => chance.below(100),
    () => 'words',
    () => ({ key: 'words' }),
    () => [1, 'two', null],
  ])()
