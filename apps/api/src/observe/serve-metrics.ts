import { createServer } from 'node:http'
import type { Metrics } from './metrics.ts'

/** Where the metrics are read. */
export type MetricsPlace = { readonly host: string; readonly port: number }

/**
 * Serves `GET /metrics` at a place of its own, so that what a shop's screens reach never includes it. Rejects when the port
 * is taken. Gives the port, and how to stop.
 */
export const serveMetrics = async (
  metrics: Metrics,
  { host, port }: MetricsPlace,
): Promise<{ readonly port: number; readonly stop: () => Promise<void> }> => {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' || request.url !== '/metrics') {
      response
        .writeHead(404, { 'content-type': 'text/plain; charset=utf-8' })
        .end('GET /metrics is all there is here.\n')
      return
    }
    metrics.text().then(
      (text) =>
        response.writeHead(200, { 'content-type': 'text/plain; version=0.0.4; charset=utf-8' }).end(text),
      () => response.writeHead(500).end(),
    )
  })
  server.requestTimeout = 10_000
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, host, () => resolve())
  })
  const address = server.address()
  return {
    port: typeof address === 'object' && address !== null ? address.port : port,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}
