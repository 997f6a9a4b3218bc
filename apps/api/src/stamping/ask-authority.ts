import { request as requestHttp } from 'node:http'
import { request as requestHttps } from 'node:https'
import { rootCertificates } from 'node:tls'

/** An answer larger than this is not read: a token with its certificates has a few kilobytes. */
const mostAnswerBytes = 64 * 1024

/** The roots that come with Node, as PEM text. */
export const nodeRoots = rootCertificates.join('\n')

export type Answered =
  | { readonly is: 'answer'; readonly bytes: Uint8Array }
  | { readonly is: 'status'; readonly status: number }
  | { readonly is: 'too-large' }
  | { readonly is: 'late' }
  | { readonly is: 'unreachable'; readonly code: string }

/**
 * Sends a request to a time-stamp authority by HTTP (RFC 3161, 3.4) and reads its answer, within `patienceMs` from the first byte to
 * the last. A name and a password in the address are sent with it; a redirect is not followed.
 */
export const askAuthority = (
  url: URL,
  request: Uint8Array,
  { patienceMs, roots }: { readonly patienceMs: number; readonly roots: string | null },
): Promise<Answered> =>
  new Promise((resolve) => {
    const begin = url.protocol === 'https:' ? requestHttps : requestHttp
    const call = begin(url, {
      method: 'POST',
      signal: AbortSignal.timeout(patienceMs),
      headers: { 'content-type': 'application/timestamp-query', 'content-length': request.length },
      ...(url.protocol === 'https:' && roots !== null ? { ca: [...rootCertificates, roots] } : {}),
    })
    const fail = (error: NodeJS.ErrnoException) =>
      resolve(
        error.name === 'AbortError' || error.name === 'TimeoutError'
          ? { is: 'late' }
          : { is: 'unreachable', code: error.code ?? error.name },
      )
    call.on('error', fail)
    call.on('response', (reply) => {
      if (reply.statusCode !== 200) {
        resolve({ is: 'status', status: reply.statusCode ?? 0 })
        call.destroy()
        return
      }
      const parts: Buffer[] = []
      let length = 0
      reply.on('data', (part: Buffer) => {
        length += part.length
        parts.push(part)
        if (length <= mostAnswerBytes) return
        resolve({ is: 'too-large' })
        call.destroy()
      })
      reply.on('error', fail)
      reply.on('end', () => resolve({ is: 'answer', bytes: new Uint8Array(Buffer.concat(parts)) }))
    })
    call.end(request)
  })
