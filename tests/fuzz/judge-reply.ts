import { Problem } from '@bayledger/contract/problem'
import * as z from 'zod/mini'
import type { FuzzRequest } from './make-request.ts'
import type { FuzzReply } from './send.ts'

export type Limits = {
  /** The longest that an answer may take, in milliseconds; `null` where nothing is timed. */
  readonly slowestMs: number | null
}

/** A refusal that is longer than this repeats what it was sent. */
const longestProblemBytes = 64 * 1024
const longestAnswerBytes = 24 * 1024 * 1024

const stackLine = /\n\s+at .+:\d+:\d+|node_modules|\.ts:\d+|\/apps\/api\/|\bselect .+ from\b|PrismaClient/

/** Why an answer is a fault of the service; `null` where it is none. */
export const faultOf = (request: FuzzRequest, reply: FuzzReply, limits: Limits): string | null => {
  const { status, text, bytes, type } = reply
  // Whoever refuses a head before it is read does not know that HEAD wants no body; Node's client then takes it for a broken reply.
  if (reply.broken !== null) return request.method === 'HEAD' ? null : `no whole answer: ${reply.broken}`
  if (status >= 500) return `status ${status}`
  const { answers } = request.operation
  const isTheSameRoute = request.method === request.operation.method
  // Whoever spoils the path may call another route; its reply is held to what that one declares by the service itself.
  const declared = answers.has(status) || request.mayMissItsRoute || !isTheSameRoute
  if (!declared) return `status ${status} is not declared by ${request.operation.operationId}`
  const isDeclaredPage = isTheSameRoute && (answers.get(status) ?? []).includes(type.split(';')[0] ?? '')
  if (status >= 400 && request.method !== 'HEAD' && !isDeclaredPage) {
    const wrong = faultOfProblem(type, text, status)
    if (wrong !== null) return wrong
    if (bytes > longestProblemBytes) return `a refusal of ${bytes} bytes`
  }
  if (stackLine.test(text) && !request.path.startsWith('/api/openapi'))
    return 'a stack or a statement in the answer'
  if (bytes > longestAnswerBytes) return `an answer of ${bytes} bytes`
  if (limits.slowestMs !== null && reply.milliseconds > limits.slowestMs)
    return `an answer after ${Math.round(reply.milliseconds)} ms`
  return null
}

const faultOfProblem = (type: string, text: string, status: number): string | null => {
  if (!type.startsWith('application/problem+json')) return `status ${status} as ${type || 'nothing'}`
  const problem = z.safeParse(Problem, readJson(text))
  if (!problem.success)
    return `status ${status} with a body that is no problem of ours: ${text.slice(0, 200)}`
  return problem.data.status === status ? null : `status ${status} says ${problem.data.status}`
}

export const readJson = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
