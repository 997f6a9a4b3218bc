import type { Endpoint } from '@bayledger/contract/endpoint'
import type { RecordVersion } from '@bayledger/contract/record'
import { call } from './api-client.ts'

/** A record as an owner's page reads it: what is edited, and what the shop knows of it besides. */
export type Kept<Content, Facts = object> = {
  readonly id: string
  readonly version: number
  readonly content: Content
  readonly facts: Facts
}

/** One version of a history, as the server tells it. */
export type KeptVersion = RecordVersion

/** The four calls of one kind of record. `sure`: fields that the person was asked about and that are right as typed. */
export type RecordSource<Content, Facts> = {
  readonly list: (signal: AbortSignal) => Promise<readonly Kept<Content, Facts>[]>
  readonly read: (
    id: string,
    signal: AbortSignal,
  ) => Promise<{ readonly record: Kept<Content, Facts>; readonly history: readonly KeptVersion[] }>
  readonly create: (
    content: Content,
    sure: readonly string[],
    idempotencyKey: string,
  ) => Promise<Kept<Content, Facts>>
  readonly put: (
    id: string,
    version: number,
    content: Content,
    sure: readonly string[],
  ) => Promise<Kept<Content, Facts>>
}

type RecordRoutes = {
  readonly list: Endpoint
  /** Absent where there is only one, which is changed and never added. */
  readonly create?: Endpoint
  readonly read: Endpoint
  readonly put: Endpoint
}

/** What `recordEndpoints` of the contract declares, as calls. The types of content and facts are the contract's. */
export const recordSource = <Content, Facts>(routes: RecordRoutes): RecordSource<Content, Facts> => {
  // One cast for all kinds of record: the compiler cannot follow the contract's schemas through a type parameter.
  const ask = call as unknown as (route: Endpoint, given: object) => Promise<unknown>
  return {
    list: async (signal) => {
      const reply = (await ask(routes.list, { signal })) as { records: Kept<Content, Facts>[] }
      return reply.records
    },
    read: (id, signal) =>
      ask(routes.read, { params: { id }, signal }) as ReturnType<RecordSource<Content, Facts>['read']>,
    create: (content, sure, idempotencyKey) => {
      if (routes.create === undefined) throw new RangeError('nothing of this kind is added')
      return ask(routes.create, { body: { content, sure }, idempotencyKey }) as Promise<Kept<Content, Facts>>
    },
    put: (id, version, content, sure) =>
      ask(routes.put, { params: { id }, version, body: { content, sure } }) as Promise<Kept<Content, Facts>>,
  }
}
