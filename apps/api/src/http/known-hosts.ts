import { X509Certificate } from 'node:crypto'
import type { FastifyInstance } from 'fastify'
import { AppError } from '../core/app-error.ts'

/** The names under which a service is called, in small letters, without a port; `*.` in front stands for one label. */
export type KnownHosts = readonly string[]

const ofThisMachine = ['localhost', '127.0.0.1', '[::1]', '::1'] as const

/** To listen on these is to be called by another name. */
const anyAddress = ['0.0.0.0', '::']

/** The names of this machine, of the certificate, of the public address, and the address that the service listens on. */
export const knownHosts = (config: {
  readonly host: string
  readonly tls: { readonly cert: string } | null
  readonly publicAddress: string | null
}): KnownHosts => {
  const named = config.tls ? (new X509Certificate(config.tls.cert).subjectAltName ?? '') : ''
  return [
    ...ofThisMachine,
    ...(anyAddress.includes(config.host) ? [] : [config.host]),
    ...(config.publicAddress === null ? [] : [new URL(config.publicAddress).hostname]),
    ...[...named.matchAll(/(?:DNS|IP Address):([^,\s]+)/g)].map(([, name = '']) => name),
  ].map((name) => name.toLowerCase())
}

/** Programs that look whether the service works call it by any address. */
const anyHost = ['/healthz', '/readyz']

/**
 * Refuses requests for a name that is not ours: a page of somebody else's that makes its own name point here could otherwise read what
 * this machine may (DNS rebinding), and links would be made for a name that a request says.
 */
export const refuseUnknownHosts = (app: FastifyInstance, hosts: KnownHosts): void => {
  app.addHook('onRequest', (request, _reply, done) => {
    const host = request.hostname.toLowerCase()
    const wider = `*.${host.split('.').slice(1).join('.')}`
    if (hosts.includes(host) || hosts.includes(wider) || anyHost.includes(request.url)) return done()
    throw new AppError({ code: 'HOST_UNKNOWN', host: host.slice(0, 100) })
  })
}
