import type { FastifyInstance } from 'fastify'

/** What our pages may load and where they may be shown (Content Security Policy, level 3). */
const policy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ')

const always = {
  'content-security-policy': policy,
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'origin-agent-cluster': '?1',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-dns-prefetch-control': 'off',
  'x-frame-options': 'DENY',
}

const withTls = { ...always, 'strict-transport-security': 'max-age=31536000; includeSubDomains' }

/**
 * Our pages load nothing from elsewhere, run no inline script and cannot be framed. The headers are the same for every
 * reply, so they are put together once.
 */
export const setSecurityHeaders = (app: FastifyInstance, tls: boolean): void => {
  const headers = tls ? withTls : always
  app.addHook('onRequest', (_request, reply, done) => {
    reply.headers(headers)
    done()
  })
}
