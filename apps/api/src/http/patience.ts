import type { FastifyInstance } from 'fastify'

/** How long a client is waited for, in milliseconds. */
export type Patience = {
  /** Until the head of a request has arrived. */
  readonly headMs: number
  /** Until the whole request has arrived. */
  readonly requestMs: number
  /** Until a connection on which nothing moves is closed; a live stream has a heartbeat every 15 s. */
  readonly silenceMs: number
  /** How often connections are looked at for the first two. */
  readonly lookEveryMs: number
}

/** The largest request, a file of 16 MB, arrives in time on a line of 1.2 Mbit/s. An import of a long list answers late. */
export const usualPatience: Patience = {
  headMs: 20_000,
  requestMs: 120_000,
  silenceMs: 600_000,
  lookEveryMs: 5_000,
}

/** What Node's server takes beside what Fastify sets. */
export const headTimes = ({ headMs, lookEveryMs }: Patience) => ({
  headersTimeout: headMs,
  connectionsCheckingInterval: lookEveryMs,
})

/** Half of the ten seconds in which a supervisor usually expects a service to end. */
const usualGraceMs = 5_000

/**
 * Takes no more requests and finishes those that have arrived. What is still open after the grace is cut off: a body of
 * which a part is missing, an answer that nobody fetches.
 */
export const closeInTime = async (app: FastifyInstance, graceMs = usualGraceMs): Promise<void> => {
  const timer = setTimeout(() => app.server.closeAllConnections(), graceMs)
  try {
    await app.close()
  } finally {
    clearTimeout(timer)
  }
}
