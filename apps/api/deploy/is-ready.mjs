import http from 'node:http'
import https from 'node:https'

// Ends with 0 where the service on this machine answers that it is ready, else with 1.
const { PORT = '4310', TLS_CERT } = process.env
const [get, scheme] = TLS_CERT ? [https.get, 'https'] : [http.get, 'http']
get(`${scheme}://localhost:${PORT}/readyz`, { rejectUnauthorized: false, timeout: 4_000 }, (reply) => {
  reply.resume()
  process.exitCode = reply.statusCode === 200 ? 0 : 1
})
  .on('timeout', (request) => request?.destroy())
  .on('error', () => {
    process.exitCode = 1
  })
