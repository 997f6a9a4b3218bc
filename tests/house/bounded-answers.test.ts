import { contract } from '@bayledger/contract/contract'
import { expect, it } from 'vitest'
import { openApiDocument } from '../../apps/api/src/http/open-api.ts'
import { longLists } from './long-lists.ts'

type Schema = { readonly [member: string]: unknown }

/** Every list in a schema for which the schema itself names no most: by the name of its member, and what its items are. */
const openLists = (schema: unknown, name: string, root: Schema, seen: readonly string[] = []): string[] => {
  if (schema === null || typeof schema !== 'object') return []
  const here = schema as Schema
  if (typeof here.$ref === 'string') {
    if (seen.includes(here.$ref)) return []
    const found = here.$ref
      .split('/')
      .slice(1)
      .reduce<unknown>((at, part) => (at as Schema)?.[part], root)
    return openLists(found, name, root, [...seen, here.$ref])
  }
  const again = (inner: unknown, innerName = name) => openLists(inner, innerName, root, seen)
  const items = here.items as Schema | undefined
  // Some words of a fixed list, each once.
  const isOpen = here.type === 'array' && here.maxItems === undefined && !Array.isArray(items?.enum)
  return [
    ...(isOpen ? [name] : []),
    ...again(items),
    ...['anyOf', 'oneOf', 'allOf'].flatMap((key) =>
      ((here[key] ?? []) as unknown[]).flatMap((one) => again(one)),
    ),
    ...Object.entries((here.properties ?? {}) as Schema).flatMap(([key, member]) => again(member, key)),
    ...again(here.additionalProperties),
  ]
}

type Operation = {
  readonly operationId: string
  readonly requestBody?: { readonly content: Record<string, { readonly schema: Schema }> }
  readonly responses: Record<string, { readonly content?: Record<string, { readonly schema: Schema }> }>
}
const paths = openApiDocument(contract, 'http://localhost').paths as Record<string, Record<string, Operation>>
const operations = Object.values(paths).flatMap((methods) => Object.values(methods))
const listsIn = (content: Record<string, { readonly schema: Schema }> = {}): string[] =>
  Object.values(content).flatMap(({ schema }) => openLists(schema, '', schema))

it('every list in an answer has a most that the contract enforces, or a reason why it is bounded otherwise', () => {
  const open = operations.flatMap(({ operationId, responses }) =>
    Object.values(responses)
      .flatMap(({ content }) => listsIn(content))
      .map((name) => ({ operationId, name })),
  )
  expect(open.filter(({ name }) => !(name in longLists))).toEqual([])
  // A reason that nothing needs any more goes.
  const named = new Set(open.map(({ name }) => name))
  expect(Object.keys(longLists).filter((name) => !named.has(name))).toEqual([])
  // It finds one that is planted.
  const planted = { type: 'object', properties: { rows: { type: 'array', items: { type: 'string' } } } }
  expect(openLists(planted, '', planted)).toEqual(['rows'])
})

it('every list in a request has a most', () => {
  const open = operations.flatMap(({ operationId, requestBody }) =>
    listsIn(requestBody?.content)
      // A sheet's own check holds it to its count of studs.
      .filter((name) => name !== 'makersSequence')
      .map((name) => `${operationId}: ${name}`),
  )
  expect(open).toEqual([])
})
