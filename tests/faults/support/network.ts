import { once } from 'node:events'
import { Agent, createServer, type IncomingMessage, type ServerResponse, request as send } from 'node:http'
import type { AddressInfo, Socket } from 'node:net'
import { pipeline } from 'node:stream/promises'
import { setTimeout as wait } from 'node:timers/promises'
import { randomFrom } from '../../../packages/reckoning/src/diagnosis/physics/random.test-support.ts'
import { drawFate, type Fate, fair, type Weather } from './weather.ts'

/** One tablet's way to the server. */
export type Network = {
  /** What the tablet takes for the server's address. */
  readonly address: string
  readonly setWeather: (weather: Weather) => void
  /** Begins a history anew, with the decisions of this seed. */
  readonly begin: (seed: number) => void
  /** Ends every connection, the half-open ones too: as when a tablet finds another access point. */
  readonly reconnect: () => void
  /** Each request since then with what became of it, in order: `POST /api/entries: unanswered`. */
  readonly history: () => readonly string[]
  readonly stop: () => Promise<void>
}

/** Milliseconds. */
const least = 50
const most = 900
/** How long a request waits at most for a later one to overtake it. */
const overtakenWithin = 1_000

/**
 * A network between one browser and the server at `port` of this machine, with a weather that decides over every request
 * for which `isInTheWeather`; others pass. The same seed decides alike over the same requests in the same order.
 */
export const startNetwork = async (
  port: number,
  isInTheWeather: (path: string) => boolean = (path) => path.startsWith('/api/'),
): Promise<Network> => {
  let random = randomFrom(1)
  const agent = new Agent({ keepAlive: true })
  const sockets = new Set<Socket>()
  let history: string[] = []
  const overtaken = new Set<() => void>()
  let weather = fair

  const server = createServer((request, response) => {
    const path = request.url ?? '/'
    if (path === portalPath) return answerAsPortal(response)
    const fate = isInTheWeather(path) ? drawFate(weather, random) : 'passed'
    if (isInTheWeather(path)) history.push(`${request.method} ${path}: ${fate}`)
    const delay = random.between(least, most)
    // A server that is down, or a tablet that left, ends the connection without an answer.
    meet(fate, request, response, delay).catch(() => request.socket.destroy())
  })
  server.on('connection', (socket) => {
    sockets.add(socket)
    socket.on('close', () => sockets.delete(socket))
    socket.on('error', () => undefined)
  })

  const forward = async (
    request: IncomingMessage,
    body: Buffer,
    response: ServerResponse,
  ): Promise<IncomingMessage> => {
    const { method, url: path, headers } = request
    const sent = send({ host: '127.0.0.1', port, method, path, headers, agent })
    // The tablet left before it was answered.
    response.once('close', () => {
      if (!response.writableFinished) sent.destroy()
    })
    sent.end(body)
    const [answer] = (await once(sent, 'response')) as [IncomingMessage]
    return answer
  }

  const meet = async (
    fate: Fate,
    request: IncomingMessage,
    response: ServerResponse,
    delay: number,
  ): Promise<void> => {
    if (fate === 'lost') return void request.socket.destroy()
    const body = await bodyOf(request)
    if (fate === 'half-open') return
    if (fate === 'portal-page') return answerAsPortal(response)
    if (fate === 'portal-redirect') return void response.writeHead(302, { location: portalPath }).end()
    if (fate === 'late') await wait(delay)
    if (fate === 'overtaken') await laterOne(overtaken)
    const answer = await forward(request, body, response)
    if (fate === 'twice') await (await forward(request, body, response)).resume()
    if (fate === 'taken-half-open' || fate === 'unanswered') {
      answer.resume()
      if (fate === 'unanswered') request.socket.destroy()
      return
    }
    response.writeHead(answer.statusCode ?? 502, endToEnd(answer.rawHeaders))
    if (fate === 'torn') return tear(answer, response)
    response.flushHeaders()
    await pipeline(answer, response)
    for (const goOn of overtaken) goOn()
  }

  server.listen(0, '127.0.0.1')
  await once(server, 'listening')
  const reconnect = () => {
    for (const socket of sockets) socket.destroy()
  }
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}`,
    setWeather: (next) => {
      weather = next
    },
    begin: (seed) => {
      random = randomFrom(seed)
      history = []
    },
    reconnect,
    history: () => history,
    stop: async () => {
      const closed = once(server, 'close')
      server.close()
      reconnect()
      agent.destroy()
      await closed
    },
  }
}

const portalPath = '/network-sign-in'

const answerAsPortal = (response: ServerResponse): void => {
  response
    .writeHead(200, { 'content-type': 'text/html; charset=utf-8' })
    .end('<!doctype html><title>Guest network</title><p>Accept the terms to go online.</p>')
}

const bodyOf = async (request: IncomingMessage): Promise<Buffer> => {
  const parts: Buffer[] = []
  for await (const part of request) parts.push(part)
  return Buffer.concat(parts)
}

/** Until a later request was answered, or a while has passed without one. */
const laterOne = async (waiting: Set<() => void>): Promise<void> => {
  const stop = new AbortController()
  const goOn = () => stop.abort()
  waiting.add(goOn)
  await wait(overtakenWithin, null, { signal: stop.signal }).catch(() => undefined)
  waiting.delete(goOn)
}

/** Passes the headers and half of the first piece on, then the connection breaks. */
const tear = async (answer: IncomingMessage, response: ServerResponse): Promise<void> => {
  const [piece] = (await once(answer, 'data')) as [Buffer]
  response.write(piece.subarray(0, piece.length >> 1), () => response.destroy())
  answer.destroy()
}

/** Headers that say something of the connection itself are each connection's own. */
const endToEnd = (rawHeaders: readonly string[]): string[] =>
  rawHeaders.flatMap((name, index) =>
    index % 2 === 0 && !/^(connection|keep-alive|transfer-encoding)$/i.test(name)
      ? [name, rawHeaders[index + 1] ?? '']
      : [],
  )
