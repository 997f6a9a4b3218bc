import { createHash } from 'node:crypto'
import type { FastifyRequest } from 'fastify'
import { AppError } from '../core/app-error.ts'

/** The version in `If-Match: "3"`. A write without it is refused, because it could overwrite a version that its sender never read. */
export const versionIn = (request: FastifyRequest): number => {
  const header = request.headers['if-match']
  if (header === undefined)
    throw new AppError(
      'VERSION_MISSING',
      'Send the version that you read in If-Match, as "3". Read it again first.',
    )
  const version = /^"(\d{1,9})"$/.exec(header)?.[1]
  if (version === undefined)
    throw new AppError('FIELDS_INVALID', 'The header If-Match must hold one version in quotation marks.', {
      fields: [
        {
          field: 'If-Match',
          found: header.slice(0, 80),
          allowed: 'a whole number in quotation marks, as "3"',
        },
      ],
    })
  return Number(version)
}

/** The key that makes a repeated request the same request, with a digest of the request. */
export const onceIn = (request: FastifyRequest): { key: string; requestHash: string } => {
  const key = request.headers['idempotency-key']
  if (typeof key !== 'string' || key === '')
    throw new AppError(
      'IDEMPOTENCY_KEY_MISSING',
      'Send an Idempotency-Key, made once when the form was opened.',
    )
  if (key.length > 100 || !/^[\x21-\x7e]+$/.test(key))
    throw new AppError('FIELDS_INVALID', 'The header Idempotency-Key is not usable.', {
      fields: [
        {
          field: 'Idempotency-Key',
          found: key.slice(0, 80),
          allowed: '1 to 100 visible characters, a UUID for one',
        },
      ],
    })
  const requestHash = createHash('sha256')
    .update(`${request.method} ${request.url}\n${JSON.stringify(request.body)}`)
    .digest('hex')
  return { key, requestHash }
}
