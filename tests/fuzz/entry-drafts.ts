import { randomBytes } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/digests'
import { definitionOf, kindNames, versionOf } from '@bayledger/ledger/registry'
import * as z from 'zod/mini'
import type { JsonSchema } from './operations.ts'
import { type Drawing, newIdFrom, validValue } from './valid-value.ts'

/** What `POST /api/entries` takes: OpenAPI leaves the payload open, and the ledger's registry says what it holds. */
export const entriesBody = (drawing: Drawing): object => {
  const { chance } = drawing
  const sides = Array.from({ length: 1 + chance.below(2) }, () => sideFrom(drawing))
  const count = chance.happens(0.8) ? 1 : 1 + chance.below(5)
  const entries = Array.from({ length: count }, () => draftFrom(drawing, sides))
  return { entries, sides: sides.filter(({ digest }) => JSON.stringify(entries).includes(digest)) }
}

type Side = { readonly digest: string; readonly salt: string; readonly text: string }

const sideFrom = ({ chance }: Drawing): Side => {
  const salt = randomBytes(32)
  const text = chance.pick([
    'A. Name',
    '555 0100',
    'it came on this morning',
    'José 🔧',
    '<b>x</b>',
    'two\nlines',
  ])
  return { digest: sideDigest(text, salt), salt: salt.toString('base64'), text }
}

/** An entry as an order holds one, or one that is made from its kind's schema, under an id of its own. */
const draftFrom = (drawing: Drawing, sides: readonly Side[]): object => {
  const { chance, known, now } = drawing
  const held = chance.happens(0.5) ? known.entry(chance) : undefined
  const kind = kindNames[chance.below(kindNames.length)] ?? 'note.added'
  const orderId =
    kind === 'order.opened' && !held ? newIdFrom(chance) : known.one(chance, 'orderId', '/api/orders')
  return {
    id: newIdFrom(chance),
    orderId: held?.orderId ?? orderId ?? newIdFrom(chance),
    kind: held?.kind ?? kind,
    version: held?.version ?? versionOf(kind),
    payload: withSides(
      drawing,
      held?.payload ?? validValue(drawing, schemaOf(definitionOf(kind).payload), kind),
      sides,
    ),
    writtenAt: new Date(now() - chance.below(600) * 1000).toISOString(),
    restsOn: [],
  }
}

/** Most digests in a payload name a side that goes along; the others stay as they are. */
const withSides = ({ chance }: Drawing, payload: unknown, sides: readonly Side[]): unknown =>
  JSON.parse(
    JSON.stringify(payload).replace(/"[0-9a-f]{64}"/g, (digest) =>
      chance.happens(0.7) ? `"${sides[chance.below(sides.length)]?.digest}"` : digest,
    ),
  )

const schemas = new Map<z.ZodMiniType, JsonSchema>()

const schemaOf = (payload: z.ZodMiniType): JsonSchema => {
  const made = schemas.get(payload) ?? z.toJSONSchema(payload, { io: 'input', unrepresentable: 'any' })
  schemas.set(payload, made)
  return made
}
