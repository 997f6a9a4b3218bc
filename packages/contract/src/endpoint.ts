import type { Role } from '@bayledger/ledger/role'
import type * as z from 'zod/mini'
import type { ErrorCode } from './errors.ts'

/** What a person who has signed in at the desk still has to do: choose their own password, or turn a second step on. */
export const awaited = ['password', 'second-step'] as const
export type Awaited = (typeof awaited)[number]

/**
 * Who may call: `desk` a person signed in at the desk; `staff` a person at the desk or on a tablet; `device` an
 * enrolled tablet with or without a person on it, or the desk; `customer-link` the holder of an order's link;
 * `public` anyone. `roles` narrows it to people who hold one of them. `session: 'checked-by-the-write'`: who calls may
 * be taken from memory, because the write itself refuses a session that is over. `awaiting`: open as well to whoever has signed in
 * and still has to do one of these before anything else. `proof: 'recent'`: who calls has proven within the last
 * ten minutes that it is them, by signing in or again since.
 */
export type Access =
  | {
      readonly who: 'desk' | 'staff'
      readonly roles?: readonly Role[]
      readonly session?: 'checked-by-the-write'
      readonly awaiting?: readonly Awaited[]
      readonly proof?: 'recent'
    }
  | { readonly who: 'device' | 'customer-link' | 'public' }

export type Method = 'GET' | 'POST' | 'PUT' | 'DELETE'

/** A reply that is not JSON, with its content type. */
export type BinaryReply = {
  readonly contentType:
    | 'application/pdf'
    | 'application/zip'
    | 'image/jpeg'
    | 'text/csv'
    | 'text/event-stream'
    | 'text/html'
}

export type ReplySchema = z.ZodMiniType | BinaryReply | null

/**
 * One route of the service: the server registers it from here, the web client calls it from here, OpenAPI is
 * generated from here. `replies` names every status that may be answered (problems by their code's status come
 * from `problems`); `null` is an empty body. A write marked `once` needs an `Idempotency-Key`, one marked
 * `ifMatch` needs the version that was read.
 */
export type Endpoint = {
  readonly operationId: string
  readonly summary: string
  readonly method: Method
  readonly path: `/${string}`
  readonly access: Access
  readonly params?: z.ZodMiniType
  readonly query?: z.ZodMiniType
  readonly body?: z.ZodMiniType
  readonly bodyIs?: 'application/pdf' | 'application/octet-stream'
  readonly bodyLimitBytes?: number
  /** The handler gets the body's bytes as they came and reads them itself; null where there were more than this. */
  readonly bodyUnreadUpTo?: number
  /** How long whoever calls waits for the whole answer, where the usual is too short. */
  readonly patienceSeconds?: number
  readonly once?: true
  /** The reply holds a whole ledger, whose entries were checked when they were admitted. */
  readonly repliesWithLedger?: true
  readonly ifMatch?: true
  readonly triesPerMinute?: number
  /** A form of another program may write here: the path itself holds what allows it, and whatever body comes is not read. */
  readonly fromAnywhere?: true
  readonly replies: { readonly [status: number]: ReplySchema }
  readonly problems: readonly ErrorCode[]
}

/** Keeps the literal types of an endpoint, so that caller and server infer params, body and replies. */
export const endpoint = <const E extends Endpoint>(definition: E): E => definition

type InputOf<S> = S extends z.ZodMiniType ? z.input<S> : undefined
type OutputOf<S> = S extends z.ZodMiniType ? z.output<S> : undefined

export type ParamsOf<E extends Endpoint> = OutputOf<E['params']>
export type QueryOf<E extends Endpoint> = OutputOf<E['query']>
export type QueryInputOf<E extends Endpoint> = InputOf<E['query']>
export type BodyOf<E extends Endpoint> = E['bodyUnreadUpTo'] extends number
  ? Uint8Array | null
  : OutputOf<E['body']>
export type BodyInputOf<E extends Endpoint> = InputOf<E['body']>

/** The body of a reply at a 2xx status. */
export type ReplyOf<E extends Endpoint> = {
  [Status in keyof E['replies']]: E['replies'][Status] extends z.ZodMiniType
    ? z.output<E['replies'][Status]>
    : E['replies'][Status] extends null
      ? undefined
      : E['replies'][Status] extends BinaryReply
        ? Blob
        : never
}[keyof E['replies']]

/** The path with its parameters filled in and the query appended; parameters are escaped. */
export const addressOf = (
  path: string,
  params: Readonly<Record<string, string | number>> = {},
  query: Readonly<Record<string, string | number | boolean | undefined>> = {},
): string => {
  const filled = path.replace(/:([a-zA-Z]+)/g, (_, name: string) => {
    const value = params[name]
    if (value === undefined) throw new Error(`${path} needs the parameter ${name}`)
    return encodeURIComponent(String(value))
  })
  const search = new URLSearchParams()
  for (const [name, value] of Object.entries(query)) if (value !== undefined) search.set(name, String(value))
  const text = search.toString()
  return text === '' ? filled : `${filled}?${text}`
}

/** Path patterns are Fastify's (`:orderId`); OpenAPI writes `{orderId}`. */
export const openApiPath = (path: string): string => path.replace(/:([a-zA-Z]+)/g, '{$1}')
