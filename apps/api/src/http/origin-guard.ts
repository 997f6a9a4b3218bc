import type { FastifyRequest } from 'fastify'
import { AppError } from '../core/app-error.ts'

/**
 * No page of another site may write here. A browser says where a request comes from (`Sec-Fetch-Site`, or
 * `Origin` in older ones); a writing request must say one of the two, and must be of our own origin or of that of the public address,
 * under which a proxy may pass requests on.
 */
export const refuseForeignWrite = (request: FastifyRequest, publicOrigin: string): void => {
  if (request.method === 'GET' || request.method === 'HEAD') return
  const site = request.headers['sec-fetch-site']
  const origin = request.headers.origin
  const ours = `${request.protocol}://${request.host}`
  const isOurOrigin = origin === ours || origin === publicOrigin
  const isOurs = site !== undefined ? site === 'same-origin' : isOurOrigin
  if (!isOurs || (origin !== undefined && !isOurOrigin))
    throw new AppError({ code: 'REQUEST_FROM_ELSEWHERE' })
}
