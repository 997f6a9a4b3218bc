import type { Wake } from '@bayledger/contract/live'
import { Client } from 'pg'
import { watchOutage } from '../core/outage.ts'
import { listMovedSince, type Seen } from './moved-since.ts'
import { fromMessage } from './wake-message.ts'

/** The one connection over which the processes of a database wake each other. */
export type LiveChannel = {
  readonly send: (messages: readonly string[]) => Promise<unknown>
  readonly close: () => Promise<void>
}

type Hearing = {
  readonly wake: (shopId: string, what: Wake) => void
  /** A session has ended; `null`: any may have, while nobody listened. */
  readonly sessionEnded: (sessionId: string | null) => void
  readonly reportFault: (words: string, error: unknown) => void
  /** What failed works again, after whole seconds. */
  readonly reportRecovery: (words: string, seconds: number) => void
}

const channel = 'bayledger_wrote'
/** Named by a trigger on the table of sessions, at the commit. */
const endedChannel = 'bayledger_session_ended'

/**
 * Listens, and also looks up every 2 s what moved: a message may be lost with the connection. An order that a message
 * has named is not named again. While the database is away it says so once. Rejects if the database cannot be reached.
 */
export const openChannel = async (
  url: string,
  { wake, sessionEnded, reportFault, reportRecovery }: Hearing,
  pollMs = 2_000,
): Promise<LiveChannel> => {
  const seen: Seen = { since: null, trays: new Map(), named: new Map() }
  const inTurn = oneAfterTheOther()
  let client: Client | null = null
  let closed = false
  let wasLost = false

  const hear = (shopId: string, what: Wake) => {
    for (const { orderId, seq } of what.orders) seen.named.set(orderId, seq)
    wake(shopId, what)
  }

  const connect = async (): Promise<Client> => {
    const next = new Client({ connectionString: url, application_name: 'bayledger-live' })
    next.on('notification', ({ channel: from, payload }) => {
      if (from === endedChannel) return sessionEnded(payload ?? null)
      const message = fromMessage(payload ?? '')
      if (message) hear(message.shopId, message.wake)
    })
    next.on('error', (error) => {
      // A lost connection may say so more than once, and one that was never made fails where it is waited for.
      if (client !== next) return
      client = null
      wasLost = true
      if (!closed) reportFault('the live connection was lost', error)
    })
    await next.connect()
    await next.query(`listen ${channel}; listen ${endedChannel}`)
    if (wasLost) sessionEnded(null)
    wasLost = false
    return next
  }

  const poll = async (): Promise<void> => {
    client ??= await connect()
    for (const [shopId, moved] of await listMovedSince(client, seen)) hear(shopId, moved)
  }

  const outage = watchOutage({
    begun: (error) => reportFault('looking for changes failed', error),
    over: (seconds) => reportRecovery('changes are found again', seconds),
  })
  const polling = setInterval(() => inTurn(poll).then(outage.works, outage.failed), pollMs)
  await inTurn(poll)

  return {
    send: (messages) =>
      inTurn(async () =>
        client?.query('select pg_notify($1, message) from unnest($2::text[]) message', [channel, messages]),
      ),
    close: async () => {
      closed = true
      clearInterval(polling)
      await inTurn(async () => client?.end())
    },
  }
}

/** One statement after the other: the connection is for waiting, not for speed. */
const oneAfterTheOther = () => {
  let turn: Promise<unknown> = Promise.resolve()
  return <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work)
    turn = next.catch(() => undefined)
    return next
  }
}
