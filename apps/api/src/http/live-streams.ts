import type { Wake } from '@bayledger/contract/live'
import type { FastifyReply } from 'fastify'

/** The open event streams of this process, each of one shop. */
export type LiveStreams = {
  readonly join: (reply: FastifyReply, shopId: string) => void
  readonly wake: (shopId: string, what: Wake) => void
  /** How many are open. */
  readonly count: () => number
  /** Ends every stream; clients come back by themselves. */
  readonly end: () => void
  readonly close: () => void
}

/** A proxy may cut a silent stream off, usually after half a minute or a minute. */
const heartbeatMs = 15_000

/** Keeps the streams of everyone who listens here, and a heartbeat on each until it is closed. */
export const openStreams = (): LiveStreams => {
  const listeners = new Map<FastifyReply, string>()
  let counter = 0

  const beating = setInterval(() => {
    for (const reply of listeners.keys()) reply.raw.write(': beat\n\n')
  }, heartbeatMs)

  const end = () => {
    for (const reply of listeners.keys()) reply.raw.end()
    listeners.clear()
  }

  return {
    join: (reply, shopId) => {
      reply.hijack()
      reply.raw.writeHead(200, {
        ...(reply.getHeaders() as Record<string, string>),
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
        'x-accel-buffering': 'no',
      })
      reply.raw.write(`retry: 2000\n${eventText(counter, { all: true, orders: [], tray: true })}`)
      listeners.set(reply, shopId)
      reply.raw.on('close', () => listeners.delete(reply))
    },
    wake: (shopId, what) => {
      counter += 1
      const event = eventText(counter, what)
      for (const [reply, shop] of listeners) if (shop === shopId) reply.raw.write(event)
    },
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
