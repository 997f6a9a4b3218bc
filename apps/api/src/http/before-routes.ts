import type { Socket } from 'node:net'
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify'
import { AppError, problemOf } from '../core/app-error.ts'
import { sendProblem } from './error-handler.ts'
import { securityHeaders } from './security-headers.ts'

/**
 * Refuses an address that cannot be decoded, or of which a part is longer than any of ours: the router gives up on it before
 * any hook runs, so the headers of every reply are set here too.
 */
export const refuseUnreadableAddress =
  (tls: boolean) =>
  (error: FastifyError, request: FastifyRequest, reply: FastifyReply): void => {
    request.log.info({ code: error.code }, 'refused')
    reply.headers(securityHeaders(tls))
    const said =
      error.statusCode === 414
        ? ({ code: 'ADDRESS_TOO_LONG' } as const)
        : ({ code: 'ADDRESS_UNREADABLE' } as const)
    void sendProblem(new AppError(said), request, reply)
  }

/**
 * So long a refused sender may go on sending: what it sends is read away. A connection that ends while bytes are still on their
 * way is reset, and the reset may overtake the answer.
 */
const lingerMs = 2_000
/** Those that have their answer; each further piece of what they send is reported again. */
const answered = new WeakSet<Socket>()

/** What Node refuses while it still reads the head of a request, or gives up waiting for: there is no request yet, only bytes. */
export const refuseUnreadableHead = (error: Error & { readonly code?: string }, socket: Socket): void => {
  if (error.code === 'ECONNRESET' || socket.destroyed || answered.has(socket)) return
  answered.add(socket)
  const said =
    error.code === 'ERR_HTTP_REQUEST_TIMEOUT'
      ? ({ code: 'REQUEST_TOO_SLOW' } as const)
      : error.code === 'HPE_HEADER_OVERFLOW'
        ? ({ code: 'HEADERS_TOO_LARGE' } as const)
        : ({ code: 'REQUEST_UNREADABLE' } as const)
  const problem = problemOf(new AppError(said), crypto.randomUUID())
  const body = JSON.stringify(problem)
  if (!socket.writable) {
    socket.destroy(error)
    return
  }
  const timer = setTimeout(() => socket.destroy(), lingerMs)
  socket.once('close', () => clearTimeout(timer))
  socket.once('end', () => socket.destroy())
  socket.end(
    [
      `HTTP/1.1 ${problem.status} ${problem.title}`,
      'Content-Type: application/problem+json; charset=utf-8',
      `Content-Length: ${Buffer.byteLength(body)}`,
      'Cache-Control: no-store',
      'X-Content-Type-Options: nosniff',
      'Connection: close',
      '',
      body,
    ].join('\r\n'),
  )
}
