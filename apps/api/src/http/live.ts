import type { Wake } from '@bayledger/contract/live'
import type { FastifyReply } from 'fastify'
import { Client } from 'pg'
import { listMovedSince, type Seen } from './moved-since.ts'
import { fromMessage, type Gathered, type Moved, toMessage } from './wake-message.ts'

/** Wakes everyone who listens when something was written, through the database, so that several processes agree. */
export type LiveHub = {
  /** Called after a commit in a shop. At most one message a shop leaves in 20 ms. */
  readonly wrote: (shopId: string, what: readonly Moved[] | 'tray') => void
  readonly join: (reply: FastifyReply, shopId: string) => void
  /** Ends every stream; clients come back by themselves. */
  readonly endStreams: () => void
  readonly close: () => Promise<void>
}

const channel = 'bayledger_wrote'
const gatherMs = 20
const pollMs = 2_000
const heartbeatMs = 15_000

/**
 * `NOTIFY` goes over a connection of its own after the commit: inside the commit it would take a lock that halves
 * the rate of writing. It may be lost with that connection, so what moved is also looked up every 2 s, and named to
 * the listeners unless a message had named it before.
 */
export const startLiveHub = async (
  url: string,
  problem: (words: string, error: unknown) => void,
): Promise<LiveHub> => {
  const listeners = new Map<FastifyReply, string>()
  const waiting = new Map<string, Gathered>()
  const seen: Seen = { since: null, trays: new Map(), named: new Map() }
  let timer: NodeJS.Timeout | null = null
  let counter = 0
  let client: Client | null = null
  let closed = false

  const wake = (shopId: string, what: Wake) => {
    counter += 1
    for (const { orderId, seq } of what.orders) seen.named.set(orderId, seq)
    const event = eventText(counter, what)
    for (const [reply, shop] of listeners) if (shop === shopId) reply.raw.write(event)
  }

  const connect = async (): Promise<void> => {
    const next = new Client({ connectionString: url, application_name: 'bayledger live' })
    next.on('notification', ({ payload }) => {
      const message = fromMessage(payload ?? '')
      if (message) wake(message.shopId, message.wake)
    })
    next.on('error', (error) => {
      client = null
      if (!closed) problem('the live connection was lost', error)
    })
    await next.connect()
    await next.query(`listen ${channel}`)
    client = next
  }

  const poll = async (): Promise<void> => {
    if (client === null) await connect()
    if (client === null) return
    for (const [shopId, moved] of await listMovedSince(client, seen)) wake(shopId, moved)
  }

  /** One statement after the other: the connection is for waiting, not for speed. */
  let turn: Promise<unknown> = Promise.resolve()
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work)
    turn = next.catch(() => undefined)
    return next
  }
  const notify = () => {
    const messages = [...waiting].map(([shopId, gathered]) => toMessage(shopId, gathered))
    waiting.clear()
    timer = null
    return inTurn(async () =>
      client?.query('select pg_notify($1, message) from unnest($2::text[]) message', [channel, messages]),
    )
  }

  const polling = setInterval(
    () => inTurn(poll).catch((error) => problem('looking for changes failed', error)),
    pollMs,
  )
  const beating = setInterval(() => {
    for (const reply of listeners.keys()) reply.raw.write(': beat\n\n')
  }, heartbeatMs)
  await inTurn(poll)

  const endStreams = () => {
    for (const reply of listeners.keys()) reply.raw.end()
    listeners.clear()
  }

  return {
    wrote: (shopId, what) => {
      const gathered = waiting.get(shopId) ?? { orders: new Map(), tray: false }
      if (what === 'tray') gathered.tray = true
      else for (const { orderId, seq } of what) gathered.orders.set(orderId, seq)
      waiting.set(shopId, gathered)
      timer ??= setTimeout(() => {
        notify().catch((error) => problem('waking failed', error))
      }, gatherMs)
    },
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
    endStreams,
    close: async () => {
      closed = true
      clearInterval(polling)
      clearInterval(beating)
      if (timer) {
        clearTimeout(timer)
        await notify()
      }
      endStreams()
      await inTurn(async () => client?.end())
    },
  }
}

const eventText = (id: number, wake: Wake): string =>
  `id: ${id}\nevent: wake\ndata: ${JSON.stringify(wake)}\n\n`
