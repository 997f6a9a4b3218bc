import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** Why an owner erases: the person asked for it, or the shop has no more use for the data. */
export const ErasureReason = z.enum(['asked', 'not-needed'])
export type ErasureReason = z.infer<typeof ErasureReason>

/** How it was made sure that whoever asks is the person, or speaks for them. */
export const IdentityCheck = z.enum(['in-person', 'called-back', 'by-known-address', 'by-authority'])
export type IdentityCheck = z.infer<typeof IdentityCheck>

/** `time-over`: the shop's time for a customer without an order. `came-late`: what came, or was due, after an erasure. */
export const KeptReason = z.enum([...ErasureReason.options, 'time-over', 'came-late'])

const count = z.int().check(z.gte(0))

/** How many of each kind of thing. `words`, `contacts`, `shown`: sides beside entries; `openings`: of links. */
export const ErasedCounts = z.strictObject({
  cards: count,
  vehicles: count,
  words: count,
  contacts: count,
  shown: count,
  photos: count,
  reports: count,
  messages: count,
  choices: count,
  openings: count,
  drafts: count,
  refused: count,
})
export type ErasedCounts = z.infer<typeof ErasedCounts>

/** What is in the way. `owed`: cents that the customer owes, under zero where the shop does. */
export const ErasureObstacle = z.discriminatedUnion('why', [
  z.strictObject({ why: z.literal('held'), order: z.nullable(z.string()), reason: z.string() }),
  z.strictObject({ why: z.literal('open'), order: z.string() }),
  z.strictObject({ why: z.literal('owed'), order: z.string(), cents: z.int() }),
  z.strictObject({ why: z.literal('on-tablet'), order: z.string(), tablet: z.string() }),
])
export type ErasureObstacle = z.infer<typeof ErasureObstacle>

export const ErasurePreview = z.strictObject({
  erasedAt: z.nullable(Instant),
  goes: ErasedCounts,
  stays: z.strictObject({
    orders: count,
    entries: count,
    /** Sealed reports that the law keeps for a time, for an owner's eyes; the keeper erases them then. */
    reports: z.array(z.strictObject({ number: z.string(), until: Instant })),
  }),
  obstacles: z.array(ErasureObstacle),
})
export type ErasurePreview = z.infer<typeof ErasurePreview>

/** One erasure, without anything of the person. `by`: `null` where the program did it by itself. */
export const Erasure = z.strictObject({
  erasureId: Id,
  customerId: Id,
  at: Instant,
  by: z.nullable(z.string()),
  reason: KeptReason,
  identity: z.nullable(IdentityCheck),
  counts: ErasedCounts,
})
export type Erasure = z.infer<typeof Erasure>

const access = { who: 'desk', roles: ['owner'] } as const
const params = z.strictObject({ customerId: Id })

export const previewErasure = endpoint({
  operationId: 'previewErasure',
  summary:
    'What would be erased of a customer, counted; what stays without the person; what is in the way. Writes nothing.',
  method: 'GET',
  path: '/api/customers/:customerId/erasure',
  access,
  params,
  replies: { 200: ErasurePreview },
  problems: ['CUSTOMER_NOT_FOUND'],
})

export const erasePerson = endpoint({
  operationId: 'erasePerson',
  summary:
    'Erase a customer’s data, in one transaction and for good. Their orders stay, without the person; every chain verifies as before. Done again it changes nothing.',
  method: 'POST',
  path: '/api/customers/:customerId/erasure',
  access: { ...access, proof: 'recent' },
  params,
  body: z.strictObject({ reason: ErasureReason, identity: IdentityCheck }),
  replies: { 201: ErasurePreview },
  problems: ['CUSTOMER_NOT_FOUND', 'ERASURE_REFUSED'],
})

export const listErasures = endpoint({
  operationId: 'listErasures',
  summary:
    'Erasures of people’s data, without the people: when, by whom, why, how many things; the newest 200.',
  method: 'GET',
  path: '/api/erasures',
  access,
  replies: { 200: z.strictObject({ erasures: z.array(Erasure).check(z.maxLength(200)) }) },
  problems: [],
})
