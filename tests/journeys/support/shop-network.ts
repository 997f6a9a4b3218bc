import { readFile } from 'node:fs/promises'
import { createServer, type IncomingMessage, request, type ServerResponse } from 'node:http'
import type { Socket } from 'node:net'
import { extname, join } from 'node:path'

/**
 * The shop's network between a tablet and the service. `gone`: nothing answers. `captive`: a network that wants a sign-in
 * first answers whatever is asked, with a page of its own.
 */
export type NetworkState = 'there' | 'gone' | 'captive'

export type ShopNetwork = {
  readonly address: string
  readonly set: (state: NetworkState) => void
  /** From now on nothing answers at paths that match; `null`: at none. */
  readonly withhold: (paths: RegExp | null) => void
  /** From now on the pages come from this folder, as after an update of the service. */
  readonly servePages: (folder: string) => void
  /** The paths that were asked for and answered by the service, in order. */
  readonly passed: readonly string[]
  readonly close: () => Promise<void>
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
}

export const openNetwork = async (service: string): Promise<ShopNetwork> => {
  let state: NetworkState = 'there'
  let pages: string | null = null
  let withheld: RegExp | null = null
  const passed: string[] = []
  const sockets = new Set<Socket>()

  const pass = (asked: IncomingMessage, answer: ServerResponse) => {
    passed.push(`${asked.method} ${asked.url}`)
    const onward = request(
      `${service}${asked.url}`,
      { method: asked.method, headers: asked.headers },
      (reply) => {
        answer.writeHead(reply.statusCode ?? 502, reply.headers)
        reply.pipe(answer)
      },
    )
    onward.on('error', () => answer.destroy())
    answer.on('close', () => onward.destroy())
    asked.pipe(onward)
  }

  const answerOf = async (asked: IncomingMessage, answer: ServerResponse) => {
    if (state === 'gone' || withheld?.test(asked.url ?? '')) return asked.socket.destroy()
    if (state === 'captive') {
      answer.writeHead(200, { 'content-type': 'text/html', 'cache-control': 'no-store' })
      return answer.end('<title>Sign in</title><h1>Sign in to this network</h1>')
    }
    const path = new URL(asked.url ?? '/', service).pathname
    const name = path === '/bay' || path.startsWith('/bay/') ? 'bay.html' : path.slice(1)
    const page = pages === null ? null : await readFile(join(pages, name)).catch(() => null)
    if (page === null) return pass(asked, answer)
    answer.writeHead(200, {
      'content-type': types[extname(name)] ?? 'application/octet-stream',
      'cache-control': 'no-cache',
    })
    return answer.end(page)
  }

  const server = createServer((asked, answer) => void answerOf(asked, answer))
  server.on('connection', (socket) => {
    sockets.add(socket)
    socket.on('close', () => sockets.delete(socket))
  })
  const cut = () => {
    for (const socket of sockets) socket.destroy()
  }
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const at = server.address()
  if (at === null || typeof at === 'string') throw new Error('the network has no port')
  return {
    address: `http://localhost:${at.port}`,
    passed,
    set: (next) => {
      state = next
      // What is under way, the live updates among it, ends with the network.
      cut()
    },
    withhold: (paths) => {
      withheld = paths
    },
    servePages: (folder) => {
      pages = folder
    },
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        cut()
      }),
  }
}
