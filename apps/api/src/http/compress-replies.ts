import { constants, gzip } from 'node:zlib'
import type { FastifyInstance } from 'fastify'

/** Below this, in bytes, compressing saves less than a network packet or two. */
const worthwhileBytes = 4 * 1024

/**
 * Compresses long JSON replies where the caller takes gzip. Streams, files and the built pages, which are compressed
 * when they are built, pass as they are. Every reply that gives a token or a secret is far shorter than the bound, so
 * that none is compressed beside text that somebody else chose (the attack that is called BREACH).
 */
export const compressReplies = (app: FastifyInstance): void => {
  app.addHook('onSend', (request, reply, payload, done) => {
    if (typeof payload !== 'string' || Buffer.byteLength(payload) < worthwhileBytes) return done()
    if (!/^application\/(?:[a-z-]+\+)?json\b/.test(String(reply.getHeader('content-type')))) return done()
    const before = reply.getHeader('vary')
    reply.header('vary', before ? `${before}, accept-encoding` : 'accept-encoding')
    if (!takesGzip(request.headers['accept-encoding'])) return done()
    reply.header('content-encoding', 'gzip')
    reply.removeHeader('content-length')
    gzip(payload, { level: constants.Z_BEST_SPEED }, done)
  })
}

/** Whether a caller names gzip and does not rule it out with a weight of zero (RFC 9110, 12.5.3). */
export const takesGzip = (accepted: string | string[] | undefined): boolean =>
  String(accepted ?? '')
    .split(',')
    .map((one) => one.trim().toLowerCase())
    .some((one) => /^gzip(?:\s*;\s*q=(?!0(?:\.0*)?$).+)?$/.test(one))
