import { Author, DraftEnvelope, Given } from '@bayledger/ledger/entry'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Digest, Id, Instant } from './identity.ts'
import { FieldProblem, mostFieldProblems } from './problem.ts'

/** One line of a ledger as it travels; the payload's schema is its kind's, in the ledger's registry. */
export const SentEntry = z.strictObject({
  id: Id,
  shopId: Id,
  orderId: Id,
  seq: z.int(),
  kind: z.string(),
  version: z.int(),
  payload: z.unknown(),
  given: Given,
  restsOn: z.array(Id).check(z.maxLength(200)),
  writtenBy: Author,
  deviceId: z.nullable(Id),
  writtenAt: Instant,
  receivedAt: Instant,
  previousHash: Digest,
  hash: Digest,
})
export type SentEntry = z.infer<typeof SentEntry>

/** A side that a payload names by HMAC-SHA-256 of the UTF-8 text under the salt (32 bytes in base64). */
export const SentSide = z.strictObject({
  digest: Digest,
  salt: z.string().check(z.regex(/^[A-Za-z0-9+/]{43}=$/)),
  text: z.string().check(z.minLength(1), z.maxLength(60_000)),
})
export type SentSide = z.infer<typeof SentSide>

const RefusalValues = z.record(z.string(), z.unknown())

/** What became of one entry, in the order in which they were sent. */
export const AppendResult = z.discriminatedUnion('result', [
  z.strictObject({
    result: z.literal('accepted'),
    id: Id,
    seq: z.int(),
    hash: Digest,
    receivedAt: Instant,
    given: Given,
  }),
  /** It was here already, with the same content: nothing was written again. */
  z.strictObject({
    result: z.literal('known'),
    id: Id,
    seq: z.int(),
    hash: Digest,
    receivedAt: Instant,
    given: Given,
  }),
  /** Final for its id. `kept`: the entry is in the tray, visible to its writer and to the desk. */
  z.strictObject({
    result: z.literal('refused'),
    id: Id,
    code: z.string(),
    /** What the words are made from: figures and codes. */
    values: RefusalValues,
    words: z.string(),
    kept: z.boolean(),
    fields: z.array(FieldProblem).check(z.maxLength(mostFieldProblems)),
  }),
  /** A newer device wrote it than this server can read: it stays in the outbox. */
  z.strictObject({ result: z.literal('not-yet'), id: Id, words: z.string() }),
])
export type AppendResult = z.infer<typeof AppendResult>

/**
 * What a tablet had heard of an order when it wrote entries: how many of its entries it had read, and whether it waited
 * since, out of reach. What its writer could not know does not make a fact untrue.
 */
export const Heard = z.strictObject({ seq: z.int().check(z.nonnegative()), waited: z.boolean() })
export type Heard = z.infer<typeof Heard>

/** How many entries one request may bring, and so how many results it gets. */
export const mostEntriesAtOnce = 100

export const appendEntries = endpoint({
  operationId: 'appendEntries',
  summary: 'Append entries, in order, each for itself; the id of each is its idempotency key.',
  method: 'POST',
  path: '/api/entries',
  access: { who: 'staff', session: 'checked-by-the-write' },
  body: z.strictObject({
    entries: z.array(DraftEnvelope).check(z.minLength(1), z.maxLength(mostEntriesAtOnce)),
    sides: z.array(SentSide).check(z.maxLength(200)),
    /** Of the order of all these entries. Left out: their writer had heard everything. */
    heard: z.optional(Heard),
  }),
  bodyLimitBytes: 4 * 1024 * 1024,
  replies: { 200: z.strictObject({ results: z.array(AppendResult).check(z.maxLength(mostEntriesAtOnce)) }) },
  problems: [],
})

export const RefusedEntry = z.strictObject({
  id: Id,
  orderId: Id,
  orderNumber: z.nullable(z.string()),
  kind: z.string(),
  code: z.string(),
  values: RefusalValues,
  words: z.string(),
  receivedAt: Instant,
  writtenBy: Author,
  /** As it came; `null` where it may hold prices and the caller gets none, and in a list where it is too long for one. */
  body: z.unknown(),
  /** How long all of it is as JSON. */
  bodyBytes: z.int(),
})
export type RefusedEntry = z.infer<typeof RefusedEntry>

/** The oldest so many; a longer body than this is read with its entry alone. */
export const mostRefusedListed = 200
export const longestBodyListedBytes = 4 * 1024

export const listRefusedEntries = endpoint({
  operationId: 'listRefusedEntries',
  summary:
    'The oldest 200 entries that were refused and are not settled, bodies over 4 KB left out: everybody’s at the desk, their own on a tablet and for a technician.',
  method: 'GET',
  path: '/api/refused-entries',
  access: { who: 'staff' },
  replies: {
    200: z.strictObject({
      refused: z.array(RefusedEntry).check(z.maxLength(mostRefusedListed)),
      isWhole: z.boolean(),
    }),
  },
  problems: [],
})

export const getRefusedEntry = endpoint({
  operationId: 'getRefusedEntry',
  summary: 'One refused entry with its whole body, also once it is settled; for whoever it would be listed.',
  method: 'GET',
  path: '/api/refused-entries/:entryId',
  access: { who: 'staff' },
  params: z.strictObject({ entryId: Id }),
  replies: { 200: RefusedEntry },
  problems: ['REFUSED_ENTRY_NOT_FOUND'],
})

export const settleRefusedEntry = endpoint({
  operationId: 'settleRefusedEntry',
  summary: 'Take a refused entry off the tray; it stays on record.',
  method: 'POST',
  path: '/api/refused-entries/:entryId/settle',
  access: { who: 'desk' },
  params: z.strictObject({ entryId: Id }),
  replies: { 204: null },
  problems: ['REFUSED_ENTRY_NOT_FOUND'],
})
