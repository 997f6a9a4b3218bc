import type { BinaryReply, BodyOf, Endpoint, ParamsOf, QueryOf } from '@bayledger/contract/endpoint'
import type { FastifyReply } from 'fastify'
import type * as z from 'zod/mini'
import type { Actor, CustomerActor, DeviceActor, StaffActor } from '../core/actor.ts'
import type { CalledFrom } from '../core/called-from.ts'
import type { Deps } from '../deps.ts'
import type { CookieChange, CookieName } from './cookies.ts'

/** Who a handler is called for, by what its endpoint's access lets in. */
export type ActorOf<E extends Endpoint> = E['access'] extends { readonly who: 'desk' | 'staff' }
  ? StaffActor
  : E['access'] extends { readonly who: 'device' }
    ? StaffActor | DeviceActor
    : E['access'] extends { readonly who: 'customer-link' }
      ? CustomerActor
      : Actor

export type Call<E extends Endpoint> = {
  /** Scoped to the actor's shop; a public endpoint has none until it has found out which shop it is about. */
  readonly deps: E['access'] extends { readonly who: 'public' } ? undefined : Deps
  readonly actor: ActorOf<E>
  readonly params: ParamsOf<E>
  readonly query: QueryOf<E>
  readonly body: BodyOf<E>
  /** The version named in `If-Match`; only where the endpoint requires one. */
  readonly version: E['ifMatch'] extends true ? number : undefined
  /** Only where the endpoint creates something once. */
  readonly once: E['once'] extends true ? { readonly key: string; readonly requestHash: string } : undefined
  /** What a cookie of ours holds; `null`: there is none. */
  readonly tokenIn: (name: CookieName) => string | null
  readonly from: CalledFrom
  readonly requestId: string
}

/**
 * A file whole, or piece by piece while it is made: where making it fails, the connection breaks off, so that nobody takes a part
 * for all of it.
 */
type ReplyBytes = Uint8Array | AsyncIterable<Uint8Array>

type BodyFor<S> = S extends z.ZodMiniType
  ? { readonly body: z.input<S> }
  : S extends BinaryReply
    ? { readonly bytes: ReplyBytes; readonly fileName?: string }
    : unknown

/** What a handler may answer: only a status that its endpoint declares, with that status's body. */
export type AnswerOf<E extends Endpoint> = {
  [Status in keyof E['replies']]: { readonly status: Status } & BodyFor<E['replies'][Status]>
}[keyof E['replies']] & {
  readonly headers?: Readonly<Record<string, string>>
  readonly cookies?: readonly CookieChange[]
}

/** An endpoint with what answers it. A stream takes the reply over instead. */
export type Binding = {
  readonly endpoint: Endpoint
  readonly answer?: (call: Call<Endpoint>) => Promise<AnyAnswer>
  readonly stream?: (reply: FastifyReply, actor: StaffActor) => void
}

export type AnyAnswer = {
  readonly status: number
  readonly body?: unknown
  readonly bytes?: ReplyBytes
  readonly fileName?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly cookies?: readonly CookieChange[]
}

/** Curried, so that the endpoint is settled before the handler's answer is held against it. */
export const bind =
  <const E extends Endpoint>(endpoint: E) =>
  (answer: (call: Call<E>) => Promise<AnswerOf<E>>): Binding => ({
    endpoint,
    answer: answer as unknown as NonNullable<Binding['answer']>,
  })

export const bindStream = (
  endpoint: Endpoint,
  stream: (reply: FastifyReply, actor: StaffActor) => void,
): Binding => ({ endpoint, stream })
