import { Readable } from 'node:stream'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { errorStatuses } from '@bayledger/contract/errors'
import type { FieldProblem } from '@bayledger/contract/problem'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import * as z from 'zod/mini'
import type { Actor } from '../core/actor.ts'
import { AppError, problemOf } from '../core/app-error.ts'
import { boundedFields } from '../core/bounded-fields.ts'
import type { Deps } from '../deps.ts'
import { refuseUnlessAllowed } from './access-guard.ts'
import type { AnyAnswer, Binding, Call } from './binding.ts'
import { refuseCodedBody } from './coded-body.ts'
import { type CookieName, readCookie, writeCookie } from './cookies.ts'
import { fieldProblems, illFormedProblems } from './field-problems.ts'
import { refuseForeignWrite } from './origin-guard.ts'
import { onceIn, versionIn } from './preconditions.ts'
import { problemsOf } from './route-problems.ts'
import { calledFrom } from './this-machine.ts'
import { dropBody, leaveBodyUnread, takeBytes } from './unread-body.ts'

export type Gate = {
  readonly scope: (shopId: string) => Deps
  /** Also of replies that are long and made of what was checked before. */
  readonly checksEveryReply: boolean
  readonly tls: boolean
  /** Scheme, name and port of the public address. */
  readonly publicOrigin: string
  readonly now: () => Date
  readonly identify: (request: FastifyRequest, access: Endpoint['access']) => Promise<Actor>
}

/**
 * Makes a route of each endpoint. Refuses to start when the contract and what answers it are not the same list,
 * or when an endpoint says nothing of access.
 */
export const registerContract = (
  app: FastifyInstance,
  contract: readonly Endpoint[],
  bindings: readonly Binding[],
  gate: Gate,
): void => {
  refuseMismatch(contract, bindings)
  app.addHook('onRoute', ({ config, url }) => {
    if (!url.startsWith('/api')) return
    if ((config as { access?: unknown } | undefined)?.access === undefined)
      throw new Error(`${url} says nothing of who may call it`)
  })
  for (const binding of bindings) {
    const { bodyUnreadUpTo, bodyIs, fromAnywhere } = binding.endpoint
    if (fromAnywhere)
      app.register(async (inner) => {
        dropBody(inner)
        registerOne(inner, binding, gate)
      })
    else if (bodyUnreadUpTo === undefined && bodyIs !== 'application/octet-stream')
      registerOne(app, binding, gate)
    else
      app.register(async (inner) => {
        if (bodyUnreadUpTo === undefined) takeBytes(inner)
        else leaveBodyUnread(inner, bodyUnreadUpTo)
        registerOne(inner, binding, gate)
      })
  }
}

const refuseMismatch = (contract: readonly Endpoint[], bindings: readonly Binding[]): void => {
  const bound = bindings.map(({ endpoint }) => endpoint.operationId)
  const twice = bound.filter((name, index) => bound.indexOf(name) !== index)
  const unbound = contract
    .filter(({ operationId }) => !bound.includes(operationId))
    .map(({ operationId }) => operationId)
  const unknown = bound.filter((name) => !contract.some(({ operationId }) => operationId === name))
  if (twice.length + unbound.length + unknown.length > 0)
    throw new Error(
      `The contract and its handlers differ. Without handler: ${unbound.join(', ') || 'none'}. Not in the contract: ${unknown.join(', ') || 'none'}. Bound twice: ${twice.join(', ') || 'none'}.`,
    )
}

const registerOne = (app: FastifyInstance, { endpoint, answer, stream }: Binding, gate: Gate): void => {
  app.route({
    method: endpoint.method,
    url: endpoint.path,
    config: {
      access: endpoint.access,
      ...(endpoint.triesPerMinute === undefined
        ? {}
        : { rateLimit: { max: endpoint.triesPerMinute, timeWindow: '1 minute' } }),
    },
    ...(endpoint.bodyLimitBytes === undefined ? {} : { bodyLimit: endpoint.bodyLimitBytes }),
    onRequest: (request, _reply, done) => {
      if (!endpoint.fromAnywhere) {
        refuseForeignWrite(request, gate.publicOrigin)
        refuseCodedBody(request)
      }
      done()
    },
    preHandler: async (request) => {
      const actor = await gate.identify(request, endpoint.access)
      request.actor = actor
      refuseUnlessAllowed(endpoint.access, actor, gate.now())
    },
    handler: async (request, reply) => {
      const { actor } = request
      if (stream) {
        if (actor.who !== 'staff') throw new Error(`${endpoint.operationId} streams to people only`)
        stream(reply, actor)
        return reply
      }
      if (!answer) throw new Error(`${endpoint.operationId} has no handler`)
      return send(endpoint, await answer(callOf(endpoint, request, gate)), reply, gate)
    },
  })
}

/** Checked after access, so that an unidentified caller does not learn what a route accepts. */
const callOf = (endpoint: Endpoint, request: FastifyRequest, gate: Gate): Call<Endpoint> => {
  const params = readPart('params', endpoint.params, request.params)
  const query = readPart('query', endpoint.query, request.query)
  const body =
    endpoint.bodyUnreadUpTo === undefined
      ? readPart('body', endpoint.body, request.body ?? undefined)
      : { value: request.body === undefined ? new Uint8Array() : request.body, faults: [] }
  const faults = boundedFields([...params.faults, ...query.faults, ...body.faults])
  if (faults.length > 0)
    throw new AppError(
      { code: 'FIELDS_INVALID', what: 'fields', fields: faults.map(({ field }) => field) },
      { fields: faults },
    )
  const { actor } = request
  return {
    actor,
    deps: actor.who === 'nobody' ? undefined : gate.scope(actor.shopId),
    params: params.value,
    query: query.value,
    body: body.value,
    version: endpoint.ifMatch ? versionIn(request) : undefined,
    once: endpoint.once ? onceIn(request) : undefined,
    tokenIn: (name: CookieName) => readCookie(request, name, gate.tls) || null,
    from: calledFrom(request, gate.publicOrigin),
    requestId: request.id,
  } as unknown as Call<Endpoint>
}

type ReadPart = { readonly value: unknown; readonly faults: readonly FieldProblem[] }

const readPart = (part: string, schema: z.ZodMiniType | undefined, input: unknown): ReadPart => {
  if (!schema) return { value: undefined, faults: [] }
  const illFormed = illFormedProblems(part, input)
  if (illFormed.length > 0) return { value: undefined, faults: illFormed }
  const parsed = z.safeParse(schema, input)
  return parsed.success
    ? { value: parsed.data, faults: [] }
    : { value: undefined, faults: fieldProblems(part, parsed.error.issues, input) }
}

/**
 * Nothing leaves that the endpoint does not declare: neither a status nor a field. A whole ledger's entries were
 * checked when they were admitted; checking 1,000 of them again takes as long as writing them out, so that only tests do.
 */
const send = (endpoint: Endpoint, answer: AnyAnswer, reply: FastifyReply, gate: Gate) => {
  const declared = endpoint.replies[answer.status]
  if (declared === undefined)
    throw new Error(`${endpoint.operationId} answered ${answer.status}, which it does not declare`)
  for (const cookie of answer.cookies ?? []) writeCookie(reply, cookie, gate.tls)
  reply.code(answer.status).headers({ 'cache-control': 'no-store', ...answer.headers })
  if (declared === null) return reply.send()
  if ('contentType' in declared) {
    if (answer.fileName !== undefined)
      reply.header(
        'content-disposition',
        `inline; filename="${answer.fileName.replace(/[^A-Za-z0-9._-]/g, '-')}"`,
      )
    // Every text of ours is UTF-8; a browser that is not told guesses.
    reply.type(
      declared.contentType.startsWith('text/')
        ? `${declared.contentType}; charset=utf-8`
        : declared.contentType,
    )
    const { bytes = new Uint8Array() } = answer
    return reply.send(bytes instanceof Uint8Array ? Buffer.from(bytes) : Readable.from(bytes))
  }
  if (endpoint.repliesWithLedger && !gate.checksEveryReply) return reply.send(answer.body)
  const checked = z.safeParse(declared, answer.body)
  if (!checked.success)
    throw new Error(
      `${endpoint.operationId} answered what it does not declare: ${JSON.stringify(checked.error.issues)}`,
    )
  return reply.send(checked.data)
}

/** A problem with a status that the route does not declare is our fault and is reported as such. */
export const guardReplies = (app: FastifyInstance, contract: readonly Endpoint[]): void => {
  const declared = new Map(
    contract.map((endpoint) => [
      `${endpoint.method} ${endpoint.path}`,
      new Set([
        ...Object.keys(endpoint.replies).map(Number),
        ...problemsOf(endpoint).map((code) => errorStatuses[code]),
      ]),
    ]),
  )
  app.addHook('onSend', (request, reply, _payload, done) => {
    const statuses = declared.get(`${request.method} ${request.routeOptions.url}`)
    if (!statuses || statuses.has(reply.statusCode)) return done()
    request.log.error({ status: reply.statusCode }, 'a reply at an undeclared status was refused')
    reply.code(500).type('application/problem+json; charset=utf-8')
    const problem = problemOf(new AppError({ code: 'INTERNAL_FAULT', requestId: request.id }), request.id)
    done(null, JSON.stringify(problem))
  })
}

declare module 'fastify' {
  interface FastifyRequest {
    /** Set by the gate before any handler runs. */
    actor: Actor
  }
}
