import * as z from 'zod/mini'
import { Hold } from './hold.ts'
import type { Kind, PayloadOf } from './registry.ts'
import { Id, Instant, plainText } from './text.ts'

/** Who wrote an entry. A link is a customer's; `system` is the server itself, in the transaction of a person's entry. */
export const Author = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('staff'), staffId: Id }),
  z.strictObject({ kind: z.literal('customer'), linkId: Id }),
  z.strictObject({ kind: z.literal('system') }),
])
export type Author = z.infer<typeof Author>

/** Values that only the server knows, when it appends. */
export const Given = z.strictObject({
  orderNumber: z.optional(plainText(20)),
  reportNumber: z.optional(plainText(24)),
  holds: z.optional(z.array(Hold)),
})
export type Given = z.infer<typeof Given>

/** What a device writes: `id` is made there and is the idempotency key. */
export const DraftEnvelope = z.strictObject({
  id: Id,
  orderId: Id,
  kind: plainText(40),
  version: z.int().check(z.positive()),
  payload: z.unknown(),
  writtenAt: Instant,
  restsOn: z.array(Id).check(z.maxLength(200)),
})
export type DraftEnvelope = z.infer<typeof DraftEnvelope>

type EntryOf<K extends Kind> = {
  readonly id: string
  readonly shopId: string
  readonly orderId: string
  readonly seq: number
  readonly kind: K
  readonly version: number
  readonly payload: PayloadOf<K>
  readonly given: Given
  readonly restsOn: readonly string[]
  readonly writtenBy: Author
  readonly deviceId: string | null
  readonly writtenAt: string
  readonly receivedAt: string
  readonly previousHash: string
  readonly hash: string
}

/** One line of an order's ledger. */
export type Entry = { [K in Kind]: EntryOf<K> }[Kind]
export type EntryOfKind<K extends Kind> = Extract<Entry, { kind: K }>

/** An entry before the server gives it its number and hash: what `fold` and `admit` read of it. */
export type Draft = {
  [K in Kind]: Omit<EntryOf<K>, 'seq' | 'receivedAt' | 'previousHash' | 'hash' | 'given'>
}[Kind]
export type DraftOfKind<K extends Kind> = Extract<Draft, { kind: K }>

/** The `previousHash` of an order's first entry. */
export const noHash = '0'.repeat(64)
