import type { ErrorCode } from '@bayledger/contract/errors'
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { AppError, problemOf } from '../core/app-error.ts'
import { constraintProblem } from '../core/constraint-problem.ts'
import { databaseTrouble } from '../core/database-trouble.ts'

/** The problem code of a constraint's name; what the database package knows, handed in. */
export type CodeOfConstraint = (constraint: string) => string | undefined

/** Every failure becomes a problem reply; an unexpected one is logged in full and reported without detail. */
export const handleErrors = (
  app: FastifyInstance,
  codeOf: CodeOfConstraint,
  onFullDisk: () => void,
): void => {
  app.setErrorHandler((error: FastifyError | Error, request, reply) => {
    const known = error instanceof AppError ? error : translated(error, codeOf)
    if (known) {
      if (known.said.code === 'SERVICE_UNAVAILABLE' && known.said.why === 'disk-full') onFullDisk()
      logRefused(known, request)
      return sendProblem(known, request, reply)
    }
    request.log.error({ err: error }, 'failed')
    return sendProblem(new AppError({ code: 'INTERNAL_FAULT', requestId: request.id }), request, reply)
  })
  app.setNotFoundHandler((request, reply) =>
    sendProblem(
      new AppError({
        code: 'ROUTE_NOT_FOUND',
        method: request.method,
        path: request.url.split('?')[0]?.slice(0, 200) ?? '',
      }),
      request,
      reply,
    ),
  )
}

/** Refusals by which somebody may be trying what they may not: in the log at its usual level, with who and where. */
const attempts: ReadonlySet<ErrorCode> = new Set([
  'ACCESS_REFUSED',
  'REQUEST_FROM_ELSEWHERE',
  'TOO_MANY_REQUESTS',
  'DEVICE_UNKNOWN',
])

const logRefused = ({ code, extras }: AppError, request: FastifyRequest): void => {
  // A field that there is not has the name that somebody typed.
  const fields = extras.fields?.length
  if (!attempts.has(code)) {
    request.log.info({ code, fields }, 'refused')
    return
  }
  const { method, actor } = request
  const staffId = actor?.who === 'staff' ? actor.staffId : undefined
  const route = request.routeOptions.url ?? 'none'
  request.log.warn({ code, method, route, address: request.ip, who: actor?.who, staffId }, 'refused')
}

/** Answers with the problem that an error is about. */
export const sendProblem = (error: AppError, request: FastifyRequest, reply: FastifyReply) => {
  const problem = problemOf(error, request.id)
  if (error.extras.retryAfterSeconds !== undefined)
    reply.header('retry-after', error.extras.retryAfterSeconds)
  // The rest of a body that is too much is read away, until the request has taken too long: a connection that ends while bytes are
  // still on their way is reset, and the reset may overtake the answer.
  if (problem.status === 413) reply.removeHeader('connection')
  return reply
    .code(problem.status)
    .header('cache-control', 'no-store')
    .type('application/problem+json; charset=utf-8')
    .serializer((body: unknown) => JSON.stringify(body))
    .send(problem)
}

/** What Fastify and the database say of their own accord, in our codes. */
const translated = (error: FastifyError | Error, codeOf: CodeOfConstraint): AppError | null => {
  const code = 'code' in error ? String(error.code) : ''
  const status = 'statusCode' in error ? error.statusCode : undefined
  if (code === 'FST_ERR_CTP_BODY_TOO_LARGE' || status === 413)
    return new AppError({ code: 'REQUEST_TOO_LARGE' })
  if (code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE' || status === 415)
    return new AppError({ code: 'REQUEST_NOT_JSON' })
  if (status === 429)
    return new AppError({ code: 'TOO_MANY_REQUESTS', seconds: 60 }, { retryAfterSeconds: 60 })
  const unavailable = databaseTrouble(error)
  if (unavailable)
    return new AppError(
      { code: 'SERVICE_UNAVAILABLE', ...unavailable },
      { retryAfterSeconds: 5, cause: error },
    )
  const broken = constraintProblem(error, codeOf)
  if (broken) return broken
  // 412 and 416: a condition or a range that fits no page of ours.
  if (status === 400 || status === 412 || status === 416)
    return new AppError({ code: 'REQUEST_UNREADABLE' }, { cause: error })
  return null
}
