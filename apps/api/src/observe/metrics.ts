import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Answered } from './answered.ts'
import type { ShopCounts } from './shop-counts.ts'

/** What the gauges read when somebody looks at them. */
export type Watched = {
  /** Connections to the database: all, those at rest, and requests that wait for one. */
  readonly pool: { readonly totalCount: number; readonly idleCount: number; readonly waitingCount: number }
  readonly liveStreams: () => number
  readonly readOnlyOrders: () => number
  readonly countShops: () => Promise<ShopCounts>
}

export type Metrics = {
  readonly answered: (request: Answered) => void
  /** All of them as Prometheus reads it. While the database is away, without what only it knows. */
  readonly text: () => Promise<string>
}

/** Seconds from a cache hit to the longest that a statement may take. */
const secondsOfAnswers = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 15]

/** The figures of one process, of their own registry. */
export const openMetrics = ({ pool, liveStreams, readOnlyOrders, countShops }: Watched): Metrics => {
  const registry = new Registry()
  const registers = [registry]
  collectDefaultMetrics({ register: registry })

  const answers = new Histogram({
    name: 'bayledger_http_request_seconds',
    help: 'Time from the request to the end of its answer.',
    labelNames: ['method', 'route', 'status'],
    buckets: secondsOfAnswers,
    registers,
  })
  const faults = new Counter({
    name: 'bayledger_http_faults_total',
    help: 'Answers of 500: faults of the program. Each is in the log by its request ID.',
    registers,
  })
  const connections = new Gauge({
    name: 'bayledger_database_connections',
    help: 'Connections of the pool by state, and requests that wait for one.',
    labelNames: ['state'],
    registers,
    collect: () => {
      connections.set({ state: 'idle' }, pool.idleCount)
      connections.set({ state: 'busy' }, pool.totalCount - pool.idleCount)
      connections.set({ state: 'waited_for' }, pool.waitingCount)
    },
  })
  const gauge = (name: string, help: string, read: () => number) => {
    const made: Gauge = new Gauge({ name, help, registers, collect: () => made.set(read()) })
  }
  gauge('bayledger_live_streams', 'Screens that listen for changes.', liveStreams)
  gauge(
    'bayledger_read_only_orders',
    'Orders that this process found altered or broken, and takes nothing for.',
    readOnlyOrders,
  )

  const isUp = new Gauge({
    name: 'bayledger_database_up',
    help: '1 where the database answered just now, 0 where it did not.',
    registers,
  })
  const counted = {
    openOrders: new Gauge({ name: 'bayledger_open_orders', help: 'Orders that are open.', registers }),
    messagesWaiting: new Gauge({
      name: 'bayledger_messages_waiting',
      help: 'Messages to customers that were not handed over yet.',
      registers,
    }),
    oldestMessageSeconds: new Gauge({
      name: 'bayledger_oldest_message_seconds',
      help: 'How long the oldest message that is due has waited.',
      registers,
    }),
  }
  const readDatabase = async () => {
    const counts = await countShops().catch(() => null)
    isUp.set(counts ? 1 : 0)
    for (const [name, made] of Object.entries(counted) as [keyof ShopCounts, Gauge][])
      if (counts) made.set(counts[name])
      else made.remove()
  }

  return {
    answered: ({ method, route, status, seconds }) => {
      answers.observe({ method, route, status: String(status) }, seconds)
      if (status === 500) faults.inc()
    },
    text: async () => {
      await readDatabase()
      return registry.metrics()
    },
  }
}
