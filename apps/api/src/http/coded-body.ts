import type { FastifyRequest } from 'fastify'
import { AppError } from '../core/app-error.ts'

/**
 * No body is unpacked here: a small one may unpack to any size. One that says it is packed is refused before it is read, so that
 * its bytes are not taken for a file.
 */
export const refuseCodedBody = ({ method, headers }: FastifyRequest): void => {
  if (method === 'GET' || method === 'HEAD') return
  const coding = headers['content-encoding']?.trim().toLowerCase()
  if (coding !== undefined && coding !== 'identity') throw new AppError({ code: 'REQUEST_COMPRESSED' })
}
