import { request } from 'node:http'

/** A request as it goes over the wire. */
export type WireRequest = {
  readonly method: string
  readonly path: string
  readonly headers: Readonly<Record<string, string>>
  readonly body: Uint8Array | null
}

/** What came back; `status` 0 where nothing did. */
export type FuzzReply = {
  readonly status: number
  readonly type: string
  readonly text: string
  readonly bytes: number
  readonly milliseconds: number
  /** Why there is no reply. */
  readonly broken: string | null
  readonly cookies: readonly string[]
}

/** No answer takes that long; a connection that stays silent longer is a fault. */
const patienceMs = 20_000

/** Sends one request on a connection of its own, from one of 200 addresses of this machine. */
export const sendRequest = (
  address: string,
  { method, path, headers, body }: WireRequest,
  from: number,
): Promise<FuzzReply> =>
  new Promise((resolve) => {
    const began = performance.now()
    const { hostname, port } = new URL(address)
    const chunks: Buffer[] = []
    const done = (status: number, type: string, broken: string | null, cookies: readonly string[]) => {
      const all = Buffer.concat(chunks)
      const milliseconds = performance.now() - began
      resolve({
        status,
        type,
        text: all.subarray(0, 2_000_000).toString(),
        bytes: all.length,
        milliseconds,
        broken,
        cookies,
      })
    }
    const call = request(
      {
        hostname: hostname === 'localhost' ? '127.0.0.1' : hostname,
        port,
        method,
        path,
        localAddress: `127.0.0.${1 + (from % 200)}`,
        agent: false,
        headers: {
          host: new URL(address).host,
          ...headers,
          ...(body ? { 'content-length': body.length } : {}),
        },
      },
      (reply) => {
        const status = reply.statusCode ?? 0
        const type = reply.headers['content-type'] ?? ''
        const cookies = (reply.headers['set-cookie'] ?? []).map((cookie) => cookie.split(';')[0] ?? '')
        if (type.startsWith('text/event-stream')) {
          done(status, type, null, cookies)
          call.destroy()
          return
        }
        reply.on('data', (chunk: Buffer) => chunks.push(chunk))
        reply.on('end', () => done(status, type, null, cookies))
        reply.on('error', (error) => done(status, type, error.message, cookies))
      },
    )
    call.setTimeout(patienceMs, () => call.destroy(new Error(`no answer in ${patienceMs / 1000} s`)))
    call.on('error', (error) => done(0, '', error.message, []))
    call.end(body ?? undefined)
  })
