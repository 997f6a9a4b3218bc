import type { FastifyInstance } from 'fastify'

/** What our pages may load and where they may be shown (Content Security Policy, level 3). */
const policyWith = (...script: readonly string[]) =>
  [
    "default-src 'self'",
    ['script-src', ...script].join(' '),
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

/** Nothing that a browser can grant, but the camera to whom it is given (Permissions Policy of the W3C). */
function permissions(camera: string): string {
  return `camera=${camera}, microphone=(), geolocation=(), payment=(), usb=(), serial=(), bluetooth=()`
}

const always = {
  'content-security-policy': policyWith("'self'"),
  'permissions-policy': permissions('()'),
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
 * The pages of the staff scan with the camera, and the reader of barcodes is WebAssembly. The customer's page does
 * neither, so it may not.
 */
export const staffPageHeaders = {
  'content-security-policy': policyWith("'self'", "'wasm-unsafe-eval'"),
  'permissions-policy': permissions('(self)'),
}

/** The headers of every reply. */
export const securityHeaders = (tls: boolean): Readonly<Record<string, string>> => (tls ? withTls : always)

/**
 * Our pages load nothing from elsewhere, run no inline script and cannot be framed. The headers are the same for every
 * reply, so they are put together once.
 */
export const setSecurityHeaders = (app: FastifyInstance, tls: boolean): void => {
  const headers = securityHeaders(tls)
  app.addHook('onRequest', (_request, reply, done) => {
    reply.headers(headers)
    done()
  })
}
