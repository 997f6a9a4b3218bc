import type { FastifyRequest } from 'fastify'
import type { CalledFrom } from '../core/called-from.ts'

/** What a program in between adds: whoever asks may then be anywhere, whatever else the header says. */
const passedOnBy = ['forwarded', 'via', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip'] as const

/** What browsers say of themselves has about half as many characters. */
const longestBrowser = 300

const loopback = /^(127(\.\d{1,3}){3}|::1|::ffff:127(\.\d{1,3}){3})$/
const ownNames = ['localhost', '127.0.0.1', '[::1]', '::1']

/**
 * Whether a browser on the machine itself asks: the connection comes from a loopback address, no program in between says
 * that it passed the request on, and the page was opened under the machine's own name, so that no name which somebody else
 * keeps can be made to point here.
 */
const isFromThisMachine = (request: FastifyRequest): boolean =>
  loopback.test(request.socket.remoteAddress ?? '') &&
  passedOnBy.every((name) => request.headers[name] === undefined) &&
  ownNames.includes(request.hostname)

/** Where a page of ours was opened: under the name by which it calls, or under the public address, behind a proxy that says another. */
const originOf = ({ protocol, host, headers }: FastifyRequest, publicOrigin: string): string =>
  headers.origin === publicOrigin ? publicOrigin : `${protocol}://${host}`

export const calledFrom = (request: FastifyRequest, publicOrigin: string): CalledFrom => ({
  isThisMachine: isFromThisMachine(request),
  addressHere: `${request.protocol}://localhost:${request.socket.localPort}`,
  address: request.ip,
  browser: request.headers['user-agent']?.slice(0, longestBrowser) ?? null,
  origin: originOf(request, publicOrigin),
})
