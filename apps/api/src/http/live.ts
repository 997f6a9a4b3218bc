import type { FastifyReply } from 'fastify'
import { Client } from 'pg'

/** Tells everyone who listens that something was written, through the database, so that several processes agree. */
export type LiveHub = {
  /** Called after a commit. At most one message leaves in 20 ms. */
  readonly wrote: () => void
  readonly join: (reply: FastifyReply) => void
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
  shopId: string,
  problem: (words: string, error: unknown) => void,
): Promise<LiveHub> => {
  const listeners = new Set<FastifyReply>()
  let counter = 0
  let waiting: NodeJS.Timeout | null = null
  let client: Client | null = null
  let closed = false
  let newest = ''

  const wake = () => {
    counter += 1
    for (const reply of listeners) reply.raw.write(`id: ${counter}\nevent: wake\ndata: {}\n\n`)
  }

  const connect = async (): Promise<void> => {
    const next = new Client({ connectionString: url, application_name: 'bayledger live' })
    next.on('notification', ({ payload }) => {
      if (payload === shopId) wake()
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
    const { rows } = (await client?.query<{ newest: string | null }>({
      name: 'live-newest',
      text: `select coalesce((select max(updated_at) from order_heads where shop_id = $1)::text, '') || '/' ||
        coalesce((select max(received_at) from refused_entries where shop_id = $1 and settled_at is null)::text, '') as newest`,
      values: [shopId],
    })) ?? { rows: [] }
    const found = rows[0]?.newest ?? ''
    if (found !== newest && newest !== '') wake()
    newest = found
  }

  /** One statement after the other: the connection is for waiting, not for speed. */
  let turn: Promise<unknown> = Promise.resolve()
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work)
    turn = next.catch(() => undefined)
    return next
  }
  const notify = () => inTurn(async () => client?.query('select pg_notify($1, $2)', [channel, shopId]))

  const polling = setInterval(
    () => inTurn(poll).catch((error) => problem('looking for changes failed', error)),
    pollMs,
  )
  const beating = setInterval(() => {
    for (const reply of listeners) reply.raw.write(': beat\n\n')
  }, heartbeatMs)
  await inTurn(poll)

  const endStreams = () => {
    for (const reply of listeners) reply.raw.end()
    listeners.clear()
  }

  return {
    wrote: () => {
      waiting ??= setTimeout(() => {
        waiting = null
        notify().catch((error) => problem('waking failed', error))
      }, gatherMs)
    },
    join: (reply) => {
      reply.hijack()
      reply.raw.writeHead(200, {
        ...(reply.getHeaders() as Record<string, string>),
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
        'x-accel-buffering': 'no',
      })
      reply.raw.write(`retry: 2000\nid: ${counter}\nevent: wake\ndata: {}\n\n`)
      listeners.add(reply)
      reply.raw.on('close', () => listeners.delete(reply))
    },
    endStreams,
    close: async () => {
      closed = true
      clearInterval(polling)
      clearInterval(beating)
      if (waiting) {
        clearTimeout(waiting)
        await notify()
      }
      endStreams()
      await inTurn(async () => client?.end())
    },
  }
}
