import type { FastifyReply } from 'fastify'
import { Client } from 'pg'

/** Tells everyone who listens that something was written, through the database, so that several processes agree. */
export type LiveHub = {
  /** Called after a commit in a shop. At most one message a shop leaves in 20 ms. */
  readonly wrote: (shopId: string) => void
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
 * the rate of writing. It may be lost with that connection, so the newest change is also looked up every 2 s.
 */
export const startLiveHub = async (
  url: string,
  problem: (words: string, error: unknown) => void,
): Promise<LiveHub> => {
  const listeners = new Map<FastifyReply, string>()
  let counter = 0
  const waiting = new Set<string>()
  let timer: NodeJS.Timeout | null = null
  let client: Client | null = null
  let closed = false
  const newest = new Map<string, string>()

  const wake = (shopId: string) => {
    counter += 1
    for (const [reply, shop] of listeners)
      if (shop === shopId) reply.raw.write(`id: ${counter}\nevent: wake\ndata: {}\n\n`)
  }

  const connect = async (): Promise<void> => {
    const next = new Client({ connectionString: url, application_name: 'bayledger live' })
    next.on('notification', ({ payload }) => {
      if (payload) wake(payload)
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
    const { rows } = (await client?.query<{ shop: string; newest: string }>({
      name: 'live-newest',
      text: `select id as shop, coalesce((select max(updated_at) from order_heads where shop_id = id)::text, '') || '/' ||
        coalesce((select max(received_at) from refused_entries where shop_id = id and settled_at is null)::text, '') as newest
        from shops`,
    })) ?? { rows: [] }
    for (const { shop, newest: found } of rows) {
      const before = newest.get(shop)
      newest.set(shop, found)
      if (before !== undefined && before !== found) wake(shop)
    }
  }

  /** One statement after the other: the connection is for waiting, not for speed. */
  let turn: Promise<unknown> = Promise.resolve()
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work)
    turn = next.catch(() => undefined)
    return next
  }
  const notify = () => {
    const shops = [...waiting]
    waiting.clear()
    timer = null
    return inTurn(async () =>
      client?.query('select pg_notify($1, shop) from unnest($2::text[]) shop', [channel, shops]),
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
    wrote: (shopId) => {
      waiting.add(shopId)
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
      reply.raw.write(`retry: 2000\nid: ${counter}\nevent: wake\ndata: {}\n\n`)
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
