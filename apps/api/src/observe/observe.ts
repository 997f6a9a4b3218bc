import type { Pool } from 'pg'
import type { Config } from '../config.ts'
import { listReadOnlyOrders } from '../features/entries/service/read-only-orders.ts'
import type { LiveHub } from '../http/live.ts'
import type { Answered } from './answered.ts'
import type { MetricsPlace } from './serve-metrics.ts'

export type Observed = {
  readonly answered: (request: Answered) => void
  readonly stop: () => Promise<void>
}

/**
 * Metrics and traces, each where its setting wants it; the libraries are loaded only then. `say` gets a line with the address of
 * the metrics. Rejects when their port is taken.
 */
export const observe = async (
  { metrics: place, tracesEndpoint }: Pick<Config, 'metrics' | 'tracesEndpoint'>,
  { pool, live }: { readonly pool: Pool; readonly live: LiveHub },
  say: (line: string) => void,
): Promise<Observed> => {
  const observers = [
    ...(place === null ? [] : [await observeByMetrics(place, pool, live, say)]),
    ...(tracesEndpoint === null ? [] : [await observeByTraces(tracesEndpoint)]),
  ]
  return {
    answered: (request) => {
      for (const observer of observers) observer.answered(request)
    },
    stop: async () => {
      for (const observer of observers) await observer.stop()
    },
  }
}

const observeByMetrics = async (
  place: MetricsPlace,
  pool: Pool,
  live: LiveHub,
  say: (line: string) => void,
): Promise<Observed> => {
  const [{ openMetrics }, { serveMetrics }, { countShops }] = await Promise.all([
    import('./metrics.ts'),
    import('./serve-metrics.ts'),
    import('./shop-counts.ts'),
  ])
  const metrics = openMetrics({
    pool,
    liveStreams: live.streams,
    readOnlyOrders: () => listReadOnlyOrders(pool).length,
    countShops: () => countShops(pool),
  })
  const { port, stop } = await serveMetrics(metrics, place)
  say(`Metrics: http://${place.host}:${port}/metrics`)
  return { answered: metrics.answered, stop }
}

const observeByTraces = async (endpoint: string): Promise<Observed> => {
  const { openTracing } = await import('./tracing.ts')
  return openTracing(endpoint)
}
