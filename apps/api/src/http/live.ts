import type { FastifyReply } from 'fastify'
import { openChannel } from './live-channel.ts'
import { type Listener, openStreams } from './live-streams.ts'
import { type Gathered, type Moved, toMessage } from './wake-message.ts'

/** Wakes everyone who listens when something was written, through the database, so that several processes agree. */
export type LiveHub = {
  /** Called after a commit in a shop. At most one message a shop leaves in 20 ms. */
  readonly wrote: (shopId: string, what: readonly Moved[] | 'tray') => void
  readonly join: (reply: FastifyReply, listener: Listener) => void
  /** How many streams are open in this process. */
  readonly streams: () => number
  /** Ends every stream; clients come back by themselves. */
  readonly endStreams: () => void
  readonly close: () => Promise<void>
}

const gatherMs = 20

/**
 * `NOTIFY` goes over a connection of its own after the commit: inside the commit it would take a lock that halves
 * the rate of writing.
 */
export const startLiveHub = async (
  url: string,
  reportFault: (words: string, error: unknown) => void,
  reportRecovery: (words: string, seconds: number) => void = () => undefined,
): Promise<LiveHub> => {
  const streams = openStreams()
  const channel = await openChannel(url, {
    wake: streams.wake,
    sessionEnded: streams.endOf,
    reportFault,
    reportRecovery,
  }).catch((error) => {
    streams.close()
    throw error
  })
  const waiting = new Map<string, Gathered>()
  let timer: NodeJS.Timeout | null = null

  const notify = () => {
    const messages = [...waiting].map(([shopId, gathered]) => toMessage(shopId, gathered))
    waiting.clear()
    timer = null
    return channel.send(messages)
  }

  return {
    wrote: (shopId, what) => {
      const gathered = waiting.get(shopId) ?? { orders: new Map(), tray: false }
      if (what === 'tray') gathered.tray = true
      else for (const { orderId, seq } of what) gathered.orders.set(orderId, seq)
      waiting.set(shopId, gathered)
      timer ??= setTimeout(() => {
        notify().catch((error) => reportFault('waking failed', error))
      }, gatherMs)
    },
    join: streams.join,
    streams: streams.count,
    endStreams: streams.end,
    close: async () => {
      if (timer) {
        clearTimeout(timer)
        await notify()
      }
      streams.close()
      await channel.close()
    },
  }
}
