import type { Wake } from '@bayledger/contract/live'
import type { FastifyReply } from 'fastify'

/** Whose stream it is: a session of a shop. */
export type Listener = { readonly shopId: string; readonly sessionId: string }

/** The open event streams of this process, each of one shop. */
export type LiveStreams = {
  readonly join: (reply: FastifyReply, listener: Listener) => void
  readonly wake: (shopId: string, what: Wake) => void
  /** Ends the streams of a session that is over; `null`: of every session, since any may be. Whoever is signed in comes back. */
  readonly endOf: (sessionId: string | null) => void
  /** How many are open. */
  readonly count: () => number
  /** Ends every stream; clients come back by themselves. */
  readonly end: () => void
  readonly close: () => void
}

/** A browser needs one, since its tabs share it; a lost connection may take a while to be noticed. */
const mostOfSession = 6

/** A proxy may cut a silent stream off, usually after half a minute or a minute. */
const heartbeatMs = 15_000

/** Keeps the streams of everyone who listens here, and a heartbeat on each until it is closed. */
export const openStreams = (): LiveStreams => {
  const listeners = new Map<FastifyReply, Listener>()
  let counter = 0

  const beating = setInterval(() => {
    for (const reply of listeners.keys()) reply.raw.write(': beat\n\n')
  }, heartbeatMs)

  const endOf = (over: string | null) => {
    for (const [reply, { sessionId }] of listeners)
      if (over === null || sessionId === over) {
        listeners.delete(reply)
        reply.raw.end()
      }
  }
  const end = () => endOf(null)

  return {
    join: (reply, listener) => {
      const own = [...listeners].filter(([, { sessionId }]) => sessionId === listener.sessionId)
      for (const [oldest] of own.slice(0, Math.max(0, own.length - mostOfSession + 1))) {
        listeners.delete(oldest)
        oldest.raw.end()
      }
      reply.hijack()
      reply.raw.writeHead(200, {
        ...(reply.getHeaders() as Record<string, string>),
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
        'x-accel-buffering': 'no',
      })
      reply.raw.write(`retry: 2000\n${eventText(counter, { all: true, orders: [], tray: true })}`)
      listeners.set(reply, listener)
      reply.raw.on('close', () => listeners.delete(reply))
    },
    wake: (shopId, what) => {
      counter += 1
      const event = eventText(counter, what)
      for (const [reply, listener] of listeners) if (listener.shopId === shopId) reply.raw.write(event)
    },
    endOf,
    count: () => listeners.size,
    end,
    close: () => {
      clearInterval(beating)
      end()
    },
  }
}

const eventText = (id: number, wake: Wake): string =>
  `id: ${id}\nevent: wake\ndata: ${JSON.stringify(wake)}\n\n`
