import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Metrics, openMetrics } from './metrics.ts'
import { serveMetrics } from './serve-metrics.ts'

const request = { method: 'GET', requestId: 'one', traceparent: null, seconds: 0.02 }
const counts = { openOrders: 14, messagesWaiting: 2, oldestMessageSeconds: 90 }
let databaseIsUp = true
let metrics: Metrics
let served: Awaited<ReturnType<typeof serveMetrics>>
beforeAll(async () => {
  metrics = openMetrics({
    pool: { totalCount: 5, idleCount: 3, waitingCount: 1 },
    liveStreams: () => 7,
    readOnlyOrders: () => 0,
    countShops: async () => {
      if (databaseIsUp) return counts
      throw new Error('the database is away')
    },
  })
  served = await serveMetrics(metrics, { host: '127.0.0.1', port: 0 })
})
afterAll(() => served.stop())

const read = async (path = '/metrics', method = 'GET') => {
  const response = await fetch(`http://127.0.0.1:${served.port}${path}`, { method })
  const type = response.headers.get('content-type')
  return { status: response.status, type, lines: (await response.text()).split('\n') }
}

describe('the metrics', () => {
  it('count answers by route and status, with their times, and faults by themselves', async () => {
    metrics.answered({ ...request, route: '/api/floor', status: 200 })
    metrics.answered({ ...request, route: '/api/floor', status: 200, seconds: 3 })
    metrics.answered({ ...request, route: '/api/orders/:orderId', status: 500 })
    const { lines } = await read()
    const floor = 'method="GET",route="/api/floor",status="200"'
    expect(lines).toContain(`bayledger_http_request_seconds_count{${floor}} 2`)
    expect(lines).toContain(`bayledger_http_request_seconds_bucket{le="0.025",${floor}} 1`)
    expect(lines).toContain('bayledger_http_faults_total 1')
  })

  it('give the state of the pool, the streams and the shops', async () => {
    const { lines } = await read()
    expect(lines).toEqual(
      expect.arrayContaining([
        'bayledger_database_connections{state="busy"} 2',
        'bayledger_database_connections{state="waited_for"} 1',
        'bayledger_live_streams 7',
        'bayledger_database_up 1',
        'bayledger_open_orders 14',
        'bayledger_messages_waiting 2',
        'bayledger_oldest_message_seconds 90',
      ]),
    )
  })

  it('are served while the database is away, without its figures', async () => {
    databaseIsUp = false
    const { status, lines } = await read()
    databaseIsUp = true
    expect(status).toBe(200)
    expect(lines).toContain('bayledger_database_up 0')
    expect(lines.filter((line) => line.startsWith('bayledger_open_orders'))).toEqual([])
  })

  it('are all that is at their place', async () => {
    expect((await read('/')).status).toBe(404)
    // Prometheus' text format, version 0.0.4, and how its signs are encoded.
    expect((await read()).type).toBe('text/plain; version=0.0.4; charset=utf-8')
    expect((await read('/metrics', 'POST')).status).toBe(404)
  })
})
