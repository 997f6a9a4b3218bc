import {
  addressOf,
  type BodyInputOf,
  type Endpoint,
  type ParamsOf,
  type QueryInputOf,
  type ReplyOf,
} from '@bayledger/contract/endpoint'
import type { Problem } from '@bayledger/contract/problem'
import { CallProblem } from './problem.ts'

type Given<Name extends string, Value> = [Value] extends [undefined] ? unknown : { [N in Name]: Value }

/** What a call to an endpoint must bring along; only what the endpoint declares. */
export type CallWith<E extends Endpoint> = Given<'params', ParamsOf<E>> &
  Given<'query', QueryInputOf<E>> &
  Given<'body', E['bodyIs'] extends string ? Blob : BodyInputOf<E>> &
  // Made once for what the person does, and sent again unchanged with every retry of it.
  (E['once'] extends true ? { idempotencyKey: string } : unknown) &
  (E['ifMatch'] extends true ? { version: number } : unknown) & {
    headers?: Readonly<Record<string, string>>
    signal?: AbortSignal
  }

/** The parts that this file reads, of any endpoint. */
type AnyCall = {
  params?: Record<string, string | number>
  query?: Record<string, string | number | boolean | undefined>
  body?: unknown
  idempotencyKey?: string
  version?: number
  headers?: Readonly<Record<string, string>>
  signal?: AbortSignal
}

/**
 * Calls one endpoint of the service and gives its reply. Throws `CallProblem` for every problem reply, and with
 * the code `UNREACHABLE` when no answer came. Shows nothing, retries nothing.
 *
 * The reply is not parsed again: the server checks every reply against the same schema, and a tablet that was
 * loaded last week must not refuse a field that was added since.
 */
export async function call<const E extends Endpoint>(endpoint: E, given: CallWith<E>): Promise<ReplyOf<E>> {
  const request = given as AnyCall
  const response = await send(endpoint, request)
  if (!response.ok) throw await problemIn(response)
  return (await replyIn(endpoint, response)) as ReplyOf<E>
}

async function send(endpoint: Endpoint, request: AnyCall): Promise<Response> {
  const raw = request.body instanceof Blob
  const headers: Record<string, string> = { accept: 'application/json, application/problem+json, */*;q=0.5' }
  // One browser may hold a desk session and a bay session; the page says which one it uses.
  const page = globalThis.location?.pathname ?? ''
  if (page.startsWith('/bay')) headers['bayledger-face'] = 'bay'
  else if (page.startsWith('/desk')) headers['bayledger-face'] = 'desk'
  if (request.body !== undefined) headers['content-type'] = endpoint.bodyIs ?? 'application/json'
  if (request.idempotencyKey !== undefined) headers['idempotency-key'] = request.idempotencyKey
  if (request.version !== undefined) headers['if-match'] = `"${request.version}"`
  try {
    return await fetch(addressOf(endpoint.path, request.params, request.query), {
      method: endpoint.method,
      headers: { ...headers, ...request.headers },
      credentials: 'same-origin',
      ...(request.body === undefined
        ? {}
        : { body: raw ? (request.body as Blob) : JSON.stringify(request.body) }),
      ...(request.signal === undefined ? {} : { signal: request.signal }),
    })
  } catch (cause) {
    if (request.signal?.aborted) throw cause
    throw new CallProblem(
      {
        status: 0,
        code: 'UNREACHABLE',
        title: 'The shop’s server does not answer.',
        detail: 'Nothing was sent. Check the network, then try again.',
      },
      cause,
    )
  }
}

async function replyIn(endpoint: Endpoint, response: Response): Promise<unknown> {
  const reply = endpoint.replies[response.status]
  if (reply === null || response.status === 204) return undefined
  return reply !== undefined && 'contentType' in reply ? response.blob() : response.json()
}

async function problemIn(response: Response): Promise<CallProblem> {
  const body: unknown = await response.json().catch(() => null)
  if (typeof body === 'object' && body !== null && 'code' in body && 'title' in body && 'detail' in body) {
    return new CallProblem(body as Problem)
  }
  return new CallProblem({
    status: response.status,
    code: 'REPLY_UNREADABLE',
    title: 'The answer was not from the shop’s server.',
    detail: `Something between here and the server answered with status ${response.status}. Try again; if it stays, tell the shop’s owner.`,
  })
}
