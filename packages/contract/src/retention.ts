import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'
import { RecordVersion, Sure } from './record.ts'

const days = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most))

/** For how long the shop keeps what is of people. `null`: until an owner erases it. */
export const RetentionContent = z.strictObject({
  /** A customer without an order for so many years is erased. */
  customerYears: z.nullable(z.int().check(z.gte(1), z.lte(30))),
  /** A sealed report outlives the erasure of its customer for so many years from its sealing. */
  reportYears: z.int().check(z.gte(1), z.lte(30)),
  /** A write-up that nobody typed on since is thrown away. */
  draftDays: days(1, 365),
  /** The address of a message that was handed over or given up, and what the mail server said. */
  messageDays: days(30, 3_650),
  /** When a customer's link was opened. */
  openingDays: days(7, 3_650),
  /** A browser that is known and was not used, and where and in what a session that is over was. */
  browserDays: days(30, 3_650),
  /** What was refused and has been settled at the desk. */
  refusedDays: days(7, 3_650),
})
export type RetentionContent = z.infer<typeof RetentionContent>

const Retention = z.strictObject({
  id: z.literal('retention'),
  version: z.int(),
  content: RetentionContent,
  facts: z.strictObject({}),
})

const count = z.int().check(z.gte(0))

/** How many things are older than the times say, and are forgotten next. */
export const PastCounts = z.strictObject({
  drafts: count,
  messages: count,
  openings: count,
  browsers: count,
  sessions: count,
  refused: count,
})
export type PastCounts = z.infer<typeof PastCounts>

/** `lastAt`: their newest order, or when the card was last written. `held`: a legal hold keeps them. */
const DueCustomer = z.strictObject({ customerId: Id, name: z.string(), lastAt: Instant, held: z.boolean() })

const access = { who: 'desk', roles: ['owner'] } as const

export const getRetention = endpoint({
  operationId: 'getRetention',
  summary:
    'For how long the shop keeps what is of people, with its history; version 0 are the usual times, which hold until an owner writes others.',
  method: 'GET',
  path: '/api/register/retention',
  access,
  replies: { 200: z.strictObject({ record: Retention, history: z.array(RecordVersion) }) },
  problems: [],
})

export const putRetention = endpoint({
  operationId: 'putRetention',
  summary: 'Write other times; what is older then is forgotten within the hour.',
  method: 'PUT',
  path: '/api/register/retention',
  access: { ...access, proof: 'recent' },
  ifMatch: true,
  body: z.strictObject({ content: RetentionContent, sure: Sure }),
  replies: { 200: Retention },
  problems: [],
})

export const listRetentionDue = endpoint({
  operationId: 'listRetentionDue',
  summary:
    'What is due to be forgotten: things by number, and the first 50 customers whose time is over within 30 days.',
  method: 'GET',
  path: '/api/register/retention/due',
  access,
  replies: {
    200: z.strictObject({ counts: PastCounts, customers: z.array(DueCustomer).check(z.maxLength(50)) }),
  },
  problems: [],
})
