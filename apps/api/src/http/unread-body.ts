import type { FastifyInstance } from 'fastify'
import { AppError } from '../core/app-error.ts'

/**
 * Passes JSON bodies on unparsed in this part of the service, so that their reader reports every fault in its own
 * words; null where there were more bytes than it takes. What is too much is read away and not kept, so that the
 * sender gets an answer and no broken connection.
 */
export const leaveBodyUnread = (app: FastifyInstance, most: number): void => {
  app.removeContentTypeParser('application/json')
  app.addContentTypeParser('application/json', async (_request: unknown, body: AsyncIterable<Buffer>) =>
    readUpTo(body, most),
  )
}

/** Times the limit; beyond it, even reading away is too much. */
const patience = 64

const readUpTo = async (body: AsyncIterable<Buffer>, most: number): Promise<Uint8Array | null> => {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of body) {
    size += chunk.length
    if (size > most * patience)
      throw new AppError({ code: 'REQUEST_TOO_LARGE', limitMegabytes: most / 1_000_000 })
    if (size <= most) chunks.push(chunk)
    else chunks.length = 0
  }
  return size > most ? null : Buffer.concat(chunks)
}

/** Takes plain bytes in this part of the service. */
export const takeBytes = (app: FastifyInstance): void => {
  app.addContentTypeParser('application/octet-stream', { parseAs: 'buffer' }, (_request, body, done) =>
    done(null, body),
  )
}

/** Takes any body in this part of the service, and looks at none. */
export const dropBody = (app: FastifyInstance): void => {
  app.removeAllContentTypeParsers()
  app.addContentTypeParser('*', { parseAs: 'buffer' }, (_request, _body, done) => done(null, undefined))
}
