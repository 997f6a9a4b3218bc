import type { Role } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** One version of a record, newest first in a history. `by`: who wrote it; `null` where it was there before history was. */
export const RecordVersion = z.strictObject({
  version: z.int(),
  content: z.record(z.string(), z.unknown()),
  by: z.nullable(z.string()),
  at: Instant,
})
export type RecordVersion = z.infer<typeof RecordVersion>

/** Names of the fields that the writer was asked about (`VALUE_DOUBTFUL`) and says are right as they were typed. */
export const Sure = z.optional(z.array(z.string().check(z.maxLength(80))).check(z.maxLength(40)))

/** A record: what an owner edits is `content`; `facts` is what the shop knows of it besides. */
export const recordOf = <Content extends z.ZodMiniType, Facts extends z.ZodMiniType>(
  content: Content,
  facts: Facts,
) => z.strictObject({ id: Id, version: z.int(), content, facts })

/**
 * The four routes of one kind of record on an owner's page: list, add, one with its history, save. Saving names the version
 * that was read; a lost race is answered with both versions, each as `content`.
 */
export const recordEndpoints = <
  const Name extends { readonly one: string; readonly all: string },
  Content extends z.ZodMiniType,
  Facts extends z.ZodMiniType,
>({
  name,
  path,
  words,
  roles,
  content,
  facts,
  proof,
}: {
  /** For operation ids, as `Place` and `Places`. */
  readonly name: Name
  readonly path: `/api/${string}`
  /** For summaries, as "place" and "places". */
  readonly words: { readonly one: string; readonly all: string }
  readonly roles: readonly Role[]
  readonly content: Content
  readonly facts: Facts
  /** Where a change of it needs a recent proof of who makes it. */
  readonly proof?: 'recent'
}) => {
  const kept = recordOf(content, facts)
  const body = z.strictObject({ content, sure: Sure })
  const access = { who: 'desk', roles } as const
  const changing = { ...access, ...(proof === undefined ? {} : { proof }) } as const
  const params = z.strictObject({ id: Id })
  return {
    list: endpoint({
      operationId: `list${name.all}`,
      summary: `The shop's ${words.all}, for the page that edits them.`,
      method: 'GET',
      path,
      access,
      replies: { 200: z.strictObject({ records: z.array(kept) }) },
      problems: [],
    }),
    create: endpoint({
      operationId: `create${name.one}`,
      summary: `Add a ${words.one}.`,
      method: 'POST',
      path,
      access: changing,
      once: true,
      body,
      replies: { 201: kept },
      problems: ['VALUE_DOUBTFUL'],
    }),
    read: endpoint({
      operationId: `get${name.one}`,
      summary: `One ${words.one} with its history, newest first; ETag holds the version too.`,
      method: 'GET',
      path: `${path}/:id`,
      access,
      params,
      replies: { 200: z.strictObject({ record: kept, history: z.array(RecordVersion) }) },
      problems: ['RECORD_NOT_FOUND'],
    }),
    put: endpoint({
      operationId: `put${name.one}`,
      summary: `Save a ${words.one}; \`If-Match\` names the version that was read.`,
      method: 'PUT',
      path: `${path}/:id`,
      access: changing,
      ifMatch: true,
      params,
      body,
      replies: { 200: kept },
      problems: ['RECORD_NOT_FOUND', 'VALUE_DOUBTFUL'],
    }),
  }
}
