import helmet from '@fastify/helmet'
import type { FastifyInstance } from 'fastify'

/** Our pages load nothing from elsewhere, run no inline script and cannot be framed. */
export const setSecurityHeaders = async (app: FastifyInstance, tls: boolean): Promise<void> => {
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        styleSrcAttr: ["'unsafe-inline'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        workerSrc: ["'self'"],
        manifestSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    referrerPolicy: { policy: 'no-referrer' },
    strictTransportSecurity: tls ? { maxAge: 31_536_000, includeSubDomains: true } : false,
  })
}
