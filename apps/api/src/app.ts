import { contract } from '@bayledger/contract/contract'
import { errorOfConstraint } from '@bayledger/db/constraint-errors'
import cookie from '@fastify/cookie'
import rateLimit from '@fastify/rate-limit'
import fastify, { type FastifyBaseLogger, type FastifyInstance, LogController } from 'fastify'
import { AppError } from './core/app-error.ts'
import { noteFullDisk } from './core/full-disk.ts'
import { forShop, type Parts } from './deps.ts'
import { accessRuleRoutes } from './features/access-rules/routes.ts'
import { checklistRoutes } from './features/checklist/routes.ts'
import { comebackRoutes } from './features/comebacks/routes.ts'
import { customerFaceRoutes } from './features/customer-face/routes.ts'
import { customerRoutes } from './features/customers/routes.ts'
import { dayRoutes } from './features/day/routes.ts'
import { deviceRoutes } from './features/devices/routes.ts'
import { diagnosisRoutes } from './features/diagnoses/routes.ts'
import { entryRoutes } from './features/entries/routes.ts'
import { erasureRoutes } from './features/erasures/routes.ts'
import { exportRoutes } from './features/exports/routes.ts'
import { firstShopRoutes } from './features/first-shop/routes.ts'
import { floorRoutes } from './features/floor/routes.ts'
import { healthRoutes } from './features/health/routes.ts'
import { holdRoutes } from './features/holds/routes.ts'
import { importRoutes } from './features/imports/routes.ts'
import { instrumentRoutes } from './features/instruments/routes.ts'
import { linkRoutes } from './features/links/routes.ts'
import { findLinkSession } from './features/links/store.ts'
import { liveRoutes } from './features/live/routes.ts'
import { mergeRoutes } from './features/merges/routes.ts'
import { messageRoutes } from './features/messages/routes.ts'
import { numberRoutes } from './features/numbers/routes.ts'
import { openApiRoutes } from './features/open-api/routes.ts'
import { orderRoutes } from './features/orders/routes.ts'
import { ownDataRoutes } from './features/own-data/routes.ts'
import { ownerCodeRoutes } from './features/owner-code/routes.ts'
import { parcelRoutes } from './features/parcels/routes.ts'
import { passkeyRoutes } from './features/passkeys/routes.ts'
import { peopleRoutes } from './features/people/routes.ts'
import { photoRoutes } from './features/photos/routes.ts'
import { placeRoutes } from './features/places/routes.ts'
import { priceRoutes } from './features/prices/routes.ts'
import { reportRoutes } from './features/reports/routes.ts'
import { retentionRoutes } from './features/retention/routes.ts'
import { searchRoutes } from './features/search/routes.ts'
import { secondStepRoutes } from './features/second-step/routes.ts'
import { securityEventRoutes } from './features/security-events/routes.ts'
import { sessionRoutes } from './features/sessions/routes.ts'
import { checkSession } from './features/sessions/service/check-session.ts'
import { findDevice } from './features/sessions/store.ts'
import { settingRoutes } from './features/settings/routes.ts'
import { sheetRoutes } from './features/sheets/routes.ts'
import { staffRoutes } from './features/staff/routes.ts'
import { stockRoutes } from './features/stock/routes.ts'
import { tabletRoutes } from './features/tablets/routes.ts'
import { textRoutes } from './features/texts/routes.ts'
import { vehiclePageRoutes } from './features/vehicle-page/routes.ts'
import { vehicleRoutes } from './features/vehicles/routes.ts'
import { writeUpDraftRoutes } from './features/write-up-drafts/routes.ts'
import { refuseUnreadableAddress, refuseUnreadableHead } from './http/before-routes.ts'
import { compressReplies } from './http/compress-replies.ts'
import { handleErrors } from './http/error-handler.ts'
import { identifyWith } from './http/identify.ts'
import { type KnownHosts, refuseUnknownHosts } from './http/known-hosts.ts'
import { headTimes, type Patience, usualPatience } from './http/patience.ts'
import { guardReplies, registerContract } from './http/register-contract.ts'
import { setSecurityHeaders } from './http/security-headers.ts'
import { serveWeb } from './http/serve-web.ts'
import type { Answered } from './observe/answered.ts'

export type AppOptions = {
  readonly parts: Parts
  readonly logger: FastifyBaseLogger | false
  /** The folder of the built faces; `null` in tests that call only the service. */
  readonly webFolder: string | null
  readonly https?: { readonly cert: string; readonly key: string }
  /** Calls a minute from one address over all routes. */
  readonly callsPerMinute: number
  /** Whether replies that hold a whole ledger are checked against the contract too. */
  readonly checksEveryReply: boolean
  /** Hears of each request that was answered. */
  readonly answered?: (request: Answered) => void
  /** The names under which it is called; left out: any. */
  readonly hosts?: KnownHosts
  /** The proxies of which `X-Forwarded-For`, `-Proto` and `-Host` are believed; left out: none. */
  readonly trustProxy?: readonly string[]
  /** How long a slow client is waited for; left out: as docs/operations.md says. */
  readonly patience?: Patience
}

/** Puts the service together, top to bottom: headers, limits, the contract with its handlers, the three faces. */
export const buildApp = async ({
  parts,
  logger,
  webFolder,
  https,
  callsPerMinute,
  checksEveryReply,
  answered,
  hosts,
  trustProxy = [],
  patience = usualPatience,
}: AppOptions): Promise<FastifyInstance> => {
  const app = fastify({
    ...(logger ? { loggerInstance: logger } : { logger: false }),
    ...(https ? { https: { ...https, ...headTimes(patience) } } : { http: headTimes(patience) }),
    ...(trustProxy.length > 0 ? { trustProxy: [...trustProxy] } : {}),
    requestTimeout: patience.requestMs,
    connectionTimeout: patience.silenceMs,
    clientErrorHandler: refuseUnreadableHead,
    frameworkErrors: refuseUnreadableAddress(parts.tls),
    genReqId: () => crypto.randomUUID(),
    logController: new LogController({ disableRequestLogging: true }),
    bodyLimit: 1024 * 1024,
    // The contract reads and checks what comes and goes; the framework's own checkers are not even loaded.
    schemaController: { compilersFactory: { buildValidator: noSchemas, buildSerializer: noSchemas } },
    // In-flight requests are finished; idle connections and live streams are ended.
    forceCloseConnections: 'idle',
  }) as unknown as FastifyInstance
  app.decorateRequest('actor')
  handleErrors(app, errorOfConstraint, () => noteFullDisk(parts.pool))
  acceptJsonAndPdfOnly(app)
  setSecurityHeaders(app, parts.tls)
  if (hosts) refuseUnknownHosts(app, hosts)
  await app.register(cookie)
  await app.register(rateLimit, {
    max: callsPerMinute,
    timeWindow: '1 minute',
    errorResponseBuilder: tooMany,
    // How much is left is nobody's business until it is used up, and `Retry-After` says the rest then.
    addHeaders: noLimitHeaders,
    addHeadersOnExceeding: noLimitHeaders,
  })
  logRequests(app)
  if (answered) reportRequests(app, answered)
  guardReplies(app, contract)
  // After the guard, which may put another reply in the place of one that it refuses.
  compressReplies(app)
  registerContract(app, contract, bindings(parts), {
    tls: parts.tls,
    now: () => parts.clock.now(),
    publicOrigin: new URL(parts.publicAddress).origin,
    checksEveryReply,
    scope: (shopId) => forShop(parts, shopId),
    identify: identifyWith(
      {
        findSession: (tokenHash, call) => checkSession(parts, tokenHash, call),
        findDevice: (tokenHash) => findDevice(parts, tokenHash),
        findLink: (tokenHash) => findLinkSession(parts, tokenHash),
      },
      parts.tls,
    ),
  })
  if (webFolder !== null) await serveWeb(app, webFolder)
  app.addHook('preClose', async () => parts.live.endStreams())
  return app
}

const bindings = (parts: Parts) => [
  ...firstShopRoutes(parts),
  ...sessionRoutes(parts),
  ...deviceRoutes(parts),
  ...staffRoutes(),
  ...peopleRoutes,
  ...secondStepRoutes,
  ...accessRuleRoutes,
  ...ownerCodeRoutes(parts),
  ...passkeyRoutes,
  ...securityEventRoutes,
  ...checklistRoutes,
  ...comebackRoutes,
  ...floorRoutes,
  ...searchRoutes,
  ...entryRoutes,
  ...parcelRoutes(parts),
  ...orderRoutes,
  ...customerRoutes,
  ...vehicleRoutes,
  ...importRoutes,
  ...vehiclePageRoutes,
  ...writeUpDraftRoutes,
  ...sheetRoutes,
  ...settingRoutes,
  ...placeRoutes,
  ...stockRoutes,
  ...instrumentRoutes,
  ...priceRoutes,
  ...tabletRoutes,
  ...textRoutes,
  ...diagnosisRoutes,
  ...linkRoutes(parts),
  ...mergeRoutes,
  ...ownDataRoutes,
  ...erasureRoutes,
  ...holdRoutes,
  ...retentionRoutes,
  ...messageRoutes(parts),
  ...dayRoutes,
  ...exportRoutes,
  ...numberRoutes,
  ...customerFaceRoutes,
  ...photoRoutes(parts),
  ...reportRoutes(parts),
  ...liveRoutes(parts),
  ...healthRoutes(parts),
  ...openApiRoutes(parts),
]

const acceptJsonAndPdfOnly = (app: FastifyInstance): void => {
  app.removeContentTypeParser('text/plain')
  app.addContentTypeParser('application/pdf', { parseAs: 'buffer' }, (_request, body, done) =>
    done(null, body),
  )
}

/** A route with a schema of the framework would pass the contract by. */
const noSchemas = () => () => {
  throw new Error('Routes are declared in the contract, without schemas of the framework.')
}

const noLimitHeaders = {
  'x-ratelimit-limit': false,
  'x-ratelimit-remaining': false,
  'x-ratelimit-reset': false,
}

const tooMany = (_request: unknown, { ttl }: { ttl: number }) => {
  const seconds = Math.max(1, Math.ceil(ttl / 1000))
  return new AppError({ code: 'TOO_MANY_REQUESTS', seconds }, { retryAfterSeconds: seconds })
}

const reportRequests = (app: FastifyInstance, answered: (request: Answered) => void): void => {
  app.addHook('onResponse', (request, reply, done) => {
    const { traceparent } = request.headers
    answered({
      method: request.method,
      route: request.routeOptions.url ?? 'none',
      status: reply.statusCode,
      seconds: reply.elapsedTime / 1000,
      requestId: request.id,
      traceparent: typeof traceparent === 'string' ? traceparent : null,
    })
    done()
  })
}

/** One line a request; neither bodies nor cookies, nor the query or an address of no route, which may hold a name. */
const logRequests = (app: FastifyInstance): void => {
  app.addHook('onResponse', (request, reply, done) => {
    request.log.info(
      {
        method: request.method,
        route: request.routeOptions.url ?? 'none',
        status: reply.statusCode,
        milliseconds: Math.round(reply.elapsedTime),
        who: request.actor?.who,
        staffId: request.actor?.who === 'staff' ? request.actor.staffId : undefined,
      },
      'answered',
    )
    done()
  })
}
