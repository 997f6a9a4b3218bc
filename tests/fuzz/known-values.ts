import type { Chance } from '../simulate/chance.ts'

type Known = string | number

/** Values that the service itself has told, by the name of their field: with them a request gets past "not found". */
export type KnownValues = {
  /** Reads every field of a JSON reply to this path. */
  readonly learn: (path: string, reply: unknown) => void
  /** A value that was told under this name, on this path where there is one. */
  readonly one: (chance: Chance, name: string, path: string) => Known | undefined
  /** An entry that an order holds. */
  readonly entry: (chance: Chance) => KnownEntry | undefined
  /** An object that was told and has all of these fields, with no others than `may`, or whichever it has. */
  readonly object: (
    chance: Chance,
    fields: { readonly must: readonly string[]; readonly may: readonly string[] | null },
  ) => Record<string, unknown> | undefined
  /** The version in which a record was told last, by its id. */
  readonly versionOf: (id: string) => number | undefined
}

export type KnownEntry = {
  readonly orderId: string
  readonly kind: string
  readonly version: number
  readonly payload: unknown
}

const mostOfAName = 60
const mostEntries = 400
const mostMembers = 40
const mostOfAShape = 12
/** Fewer fields say too little of what an object is. */
const fewestFields = 3

/** The names under which replies tell what a request calls otherwise. */
const otherNames: Readonly<Record<string, readonly string[]>> = {
  after: ['seq'],
  cursor: ['next'],
  entryId: ['id'],
  '/api/reports number': ['reportNumber'],
  '/api/customer number': ['reportNumber'],
  '/api/customers mergedId': ['customerId'],
  '/api/vehicles mergedId': ['vehicleId'],
  subjectId: ['customerId', 'orderId'],
  mergedVersion: ['version'],
  orderIds: ['orderId'],
  orders: ['orderId'],
  restsOn: ['entryId', 'id'],
  witnessId: ['staffId'],
  'If-Match': ['version'],
}

export const knownValues = (): KnownValues => {
  const values = new Map<string, Known[]>()
  const entries: KnownEntry[] = []
  const shapes = new Map<string, Record<string, unknown>[]>()
  const versions = new Map<string, number>()

  const keep = (name: string, value: Known): void => {
    const kept = values.get(name) ?? []
    values.set(name, kept)
    if (kept.includes(value)) return
    kept.push(value)
    if (kept.length > mostOfAName) kept.shift()
  }
  const keepObject = (value: Record<string, unknown>): void => {
    const names = Object.keys(value)
    const id = names.find((name) => name === 'id' || name.endsWith('Id'))
    if (id !== undefined && typeof value.version === 'number') versions.set(String(value[id]), value.version)
    if (names.length < fewestFields) return
    const shape = names.toSorted().join()
    const kept = shapes.get(shape) ?? []
    shapes.set(shape, kept)
    kept.push(value)
    if (kept.length > mostOfAShape) kept.shift()
  }
  const visit = (place: string, name: string, value: unknown, depth: number): void => {
    if (depth > 12 || value === null || value === undefined) return
    if (typeof value === 'string' || typeof value === 'number') {
      if (String(value).length > 300) return
      keep(name, value)
      keep(`${place} ${name}`, value)
    } else if (Array.isArray(value))
      // Of a long list also its end: what an order came to is there.
      for (const member of [...value.slice(0, mostMembers), ...value.slice(mostMembers).slice(-mostMembers)])
        visit(place, name, member, depth + 1)
    else if (typeof value === 'object') {
      if (isEntry(value)) {
        entries.push(value)
        if (entries.length > mostEntries) entries.shift()
      }
      keepObject(value as Record<string, unknown>)
      for (const [key, member] of Object.entries(value).slice(0, mostMembers))
        visit(place, key, member, depth + 1)
    }
  }

  return {
    learn: (path, reply) => visit(nounOf(path), 'value', reply, 0),
    one: (chance, name, path) => {
      const here = `${nounOf(path)} ${name}`
      for (const candidate of [here, ...(otherNames[here] ?? []), name, ...(otherNames[name] ?? [])]) {
        const kept = values.get(candidate)
        if (kept?.length) return kept[chance.below(kept.length)]
      }
      return undefined
    },
    entry: (chance) => entries[chance.below(entries.length)],
    object: (chance, { must, may }) => {
      if (must.length < fewestFields) return undefined
      const fitting = [...shapes.values()].filter(([one]) => one && must.every((name) => name in one))
      const kept = fitting[chance.below(fitting.length)] ?? []
      const found = kept[chance.below(kept.length)]
      if (!found) return undefined
      return structuredClone(
        Object.fromEntries(Object.entries(found).filter(([name]) => may?.includes(name) ?? true)),
      )
    },
    versionOf: (id) => versions.get(id),
  }
}

/** `/api/people/{id}/pin` is about people. */
const nounOf = (path: string): string =>
  path
    .split('/')
    .slice(0, 3)
    .join('/')
    .replace(/\.csv$/, '')

const isEntry = (value: object): value is KnownEntry =>
  'hash' in value && 'payload' in value && 'kind' in value && 'version' in value && 'orderId' in value
