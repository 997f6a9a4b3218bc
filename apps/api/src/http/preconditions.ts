import { createHash } from 'node:crypto'
import type { FastifyRequest } from 'fastify'
import { AppError } from '../core/app-error.ts'
import { allowedWords } from '../words/field-words.ts'

/** The version in `If-Match: "3"`. A write without it is refused, because it could overwrite a version that its sender never read. */
export const versionIn = (request: FastifyRequest): number => {
  const header = request.headers['if-match']
  if (header === undefined) throw new AppError({ code: 'VERSION_MISSING' })
  const version = /^"(\d{1,9})"$/.exec(header)?.[1]
  if (version === undefined)
    throw new AppError(
      { code: 'FIELDS_INVALID', what: 'if-match' },
      {
        fields: [
          {
            field: 'If-Match',
            found: header.slice(0, 80),
            allowed: allowedWords.quotedVersion,
          },
        ],
      },
    )
  return Number(version)
}

/** The key that makes a repeated request the same request, with a digest of the request. */
export const onceIn = (request: FastifyRequest): { key: string; requestHash: string } => {
  const key = request.headers['idempotency-key']
  if (typeof key !== 'string' || key === '') throw new AppError({ code: 'IDEMPOTENCY_KEY_MISSING' })
  if (key.length > 100 || !/^[\x21-\x7e]+$/.test(key))
    throw new AppError(
      { code: 'FIELDS_INVALID', what: 'idempotency-key' },
      {
        fields: [
          {
            field: 'Idempotency-Key',
            found: key.slice(0, 80),
            allowed: allowedWords.idempotencyKey,
          },
        ],
      },
    )
  const requestHash = createHash('sha256')
    .update(`${request.method} ${request.url}\n`)
    .update(Buffer.isBuffer(request.body) ? request.body : String(JSON.stringify(request.body)))
    .digest('hex')
  return { key, requestHash }
}
