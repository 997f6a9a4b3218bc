import {
  addressOf,
  type BodyInputOf,
  type Endpoint,
  type ParamsOf,
  type QueryInputOf,
  type ReplyOf,
} from '@bayledger/contract/endpoint'
import type { Problem } from '@bayledger/contract/problem'
import { screens } from '@bayledger/wording/en/screens'
import { actedLately } from './person-acts.ts'
import { CallProblem, isCallProblem } from './problem.ts'
import { askForProof } from './proof.ts'

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
 * A connection may stay open and bring nothing more, as behind a lifted truck. After so long without a whole answer the
 * server counts as out of reach; sealing a report takes a few seconds, and what takes longer says so in the contract.
 */
export const patienceMilliseconds = 30_000

/**
 * Calls one endpoint of the service and gives its reply. Throws `CallProblem` for every problem reply, and with
 * the code `UNREACHABLE` when no answer came. Shows nothing, retries nothing, but what needs a recent proof of who calls.
 *
 * The reply is not parsed again: the server checks every reply against the same schema, and a tablet that was
 * loaded last week must not refuse a field that was added since.
 */
export async function call<const E extends Endpoint>(endpoint: E, given: CallWith<E>): Promise<ReplyOf<E>> {
  try {
    return await callOnce(endpoint, given)
  } catch (thrown) {
    // What was typed is still here, so that the same is sent again once the person has proven that it is them.
    if (!isCallProblem(thrown, 'PROOF_NEEDED') || !(await askForProof())) throw thrown
    return callOnce(endpoint, given)
  }
}

async function callOnce<const E extends Endpoint>(endpoint: E, given: CallWith<E>): Promise<ReplyOf<E>> {
  const request = given as AnyCall
  const patience = new AbortController()
  const { patienceSeconds } = endpoint as Endpoint
  const milliseconds = patienceSeconds === undefined ? patienceMilliseconds : patienceSeconds * 1_000
  const timer = setTimeout(() => patience.abort(), milliseconds)
  const signals = request.signal === undefined ? [patience.signal] : [patience.signal, request.signal]
  try {
    const response = await send(endpoint, { ...request, signal: AbortSignal.any(signals) })
    if (!response.ok) throw await problemIn(response)
    return (await replyIn(endpoint, response)) as ReplyOf<E>
  } catch (cause) {
    if (isCallProblem(cause) || request.signal?.aborted) throw cause
    throw unreachable(cause)
  } finally {
    clearTimeout(timer)
  }
}

async function send(endpoint: Endpoint, request: AnyCall): Promise<Response> {
  const raw = request.body instanceof Blob
  const headers: Record<string, string> = { accept: 'application/json, application/problem+json, */*;q=0.5' }
  // One browser may hold a desk session and a bay session; the page says which one it uses.
  const page = globalThis.location?.pathname ?? ''
  if (page.startsWith('/bay')) headers['bayledger-face'] = 'bay'
  else if (page.startsWith('/desk')) headers['bayledger-face'] = 'desk'
  if (actedLately()) headers['bayledger-act'] = 'person'
  if (request.body !== undefined) headers['content-type'] = endpoint.bodyIs ?? 'application/json'
  if (request.idempotencyKey !== undefined) headers['idempotency-key'] = request.idempotencyKey
  if (request.version !== undefined) headers['if-match'] = `"${request.version}"`
  return fetch(addressOf(endpoint.path, request.params, request.query), {
    method: endpoint.method,
    headers: { ...headers, ...request.headers },
    credentials: 'same-origin',
    ...(request.body === undefined
      ? {}
      : { body: raw ? (request.body as Blob) : JSON.stringify(request.body) }),
    ...(request.signal === undefined ? {} : { signal: request.signal }),
  })
}

/** No answer, or one that broke off or is none of the server's: whether the server has it is not known. */
const unreachable = (cause: unknown): CallProblem =>
  new CallProblem({ status: 0, code: 'UNREACHABLE', ...screens.unreachable }, cause)

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
  const { status } = response
  return new CallProblem({ status, code: 'REPLY_UNREADABLE', ...screens.notOurs(status) })
}
