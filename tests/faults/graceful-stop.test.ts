import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

/** `npm start` itself, on a database that is given: what it prints, what it logs, and how it ends. */
let database: TestDatabase
let dataFolder: string
/** Takes traces as a collector does (OTLP 1.x over HTTP, in JSON). */
const received: string[] = []
const collector = createServer((request, response) => {
  let body = ''
  request.setEncoding('utf8').on('data', (text) => {
    body += text
  })
  request.on('end', () => {
    received.push(`${request.url} ${body}`)
    response.writeHead(200, { 'content-type': 'application/json' }).end('{}')
  })
})
beforeAll(async () => {
  database = await createTestDatabase('empty')
  dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-start-'))
  collector.listen(0, '127.0.0.1')
  await once(collector, 'listening')
})
afterAll(async () => {
  collector.close()
  await database.drop()
  rmSync(dataFolder, { recursive: true, force: true })
})

const start = (
  command: readonly [string, ...string[]] = [process.execPath, 'apps/api/src/commands/start.ts'],
) => {
  const child = spawn(command[0], command.slice(1), {
    env: {
      ...process.env,
      SHOP_SEED: 'demo-day',
      DATABASE_URL: database.serviceUrl,
      DATABASE_OWNER_URL: database.url,
      DATA_FOLDER: dataFolder,
      PORT: '0',
      LOG_LEVEL: 'info',
      METRICS_PORT: '0',
      OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: `http://127.0.0.1:${(collector.address() as AddressInfo).port}/v1/traces`,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const lines: string[] = []
  for (const stream of [child.stdout, child.stderr])
    createInterface({ input: stream }).on('line', (line) => lines.push(line))
  const until = async (words: RegExp): Promise<string> => {
    for (;;) {
      const found = lines.find((line) => words.test(line))
      if (found !== undefined) return found
      if (child.exitCode !== null && child.stdout.readableEnded)
        throw new Error(`it ended (${child.exitCode}):\n${lines.join('\n')}`)
      await Promise.race([once(child.stdout, 'data'), once(child.stderr, 'data'), once(child, 'exit')])
    }
  }
  return { child, lines, until }
}

describe('starting and stopping', () => {
  it('says where it is and how to sign in, logs no secret, and stops without an error when asked to', async () => {
    const { child, lines, until } = start()
    const ready = await until(/Bayledger is ready/)
    const address = /http:\/\/\S+$/.exec(ready)?.[0] ?? ''
    await until(/A tablet needs a code/)
    expect(lines.join('\n')).toContain(people.ottoline.password)

    const told = lines.length
    const { signInName, password } = people.ottoline
    const signIn = await fetch(`${address}/api/sessions/desk`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin' },
      body: JSON.stringify({ name: signInName, password }),
    })
    expect(signIn.status).toBe(201)
    const cookie = signIn.headers.get('set-cookie')?.split(';')[0] ?? ''
    const caller = { traceId: '0af7651916cd43dd8448eb211c80319c', spanId: 'b7ad6b7169203331' }
    const traceparent = `00-${caller.traceId}-${caller.spanId}-01`
    const floor = await fetch(`${address}/api/floor?locationId=`, { headers: { cookie, traceparent } })
    expect(floor.status).toBe(422)
    const { requestId } = (await floor.json()) as { requestId: string }
    expect((await fetch(`${address}/desk`)).headers.get('content-type')).toContain('text/html')
    await until(/"route":"\/api\/floor"/)
    const logged = lines.slice(told).join('\n')
    expect(logged).toContain('"route":"/api/sessions/desk"')
    expect(logged).toContain(`"reqId":"${requestId}"`)
    for (const secret of [password, cookie.split('=')[1] ?? cookie]) expect(logged).not.toContain(secret)

    const metrics = await fetch(/Metrics: (\S+)/.exec(lines.join('\n'))?.[1] ?? '').then((reply) =>
      reply.text(),
    )
    expect(metrics).toContain(
      'bayledger_http_request_seconds_count{method="GET",route="/api/floor",status="422"} 1',
    )
    expect(metrics).toContain('bayledger_database_up 1')

    // A page that listens does not keep the service from ending.
    const live = await fetch(`${address}/api/live`, { headers: { cookie } })
    expect(live.status).toBe(200)
    child.kill('SIGTERM')
    const [code] = (await once(child, 'exit')) as [number]
    expect(await live.text()).toContain('event: wake')
    expect(code, lines.join('\n')).toBe(0)
    expect(lines.join('\n')).toContain('Finishing what is in flight')
    // The example of W3C Trace Context, section 3.2.2: the span of the request belongs to the caller's trace.
    const traces = received.join('\n')
    expect(traces).toContain('/v1/traces')
    expect(traces).toMatch(new RegExp(`"traceId":"${caller.traceId}"[^}]*"parentSpanId":"${caller.spanId}"`))
    expect(traces).toContain('GET /api/floor')
    for (const secret of [password, cookie.split('=')[1] ?? cookie]) expect(traces).not.toContain(secret)
  })

  it('starts again on existing data, says when a port is taken, and ends when npm alone is asked to', async () => {
    const first = start(['npm', 'start'])
    const ready = await first.until(/Bayledger is ready/)
    const port = /:(\d+)$/.exec(ready)?.[1] ?? ''
    const second = spawn(process.execPath, ['apps/api/src/commands/start.ts'], {
      env: {
        ...process.env,
        DATABASE_URL: database.serviceUrl,
        DATABASE_OWNER_URL: database.url,
        DATA_FOLDER: dataFolder,
        PORT: port,
      },
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    let said = ''
    second.stderr.on('data', (text) => {
      said += text
    })
    const [code] = (await once(second, 'exit')) as [number]
    expect(code).toBe(1)
    expect(said).toContain('The port is taken')
    first.child.kill('SIGTERM')
    await first.until(/Finishing what is in flight/)
    await vi.waitUntil(
      () =>
        fetch(`http://localhost:${port}/healthz`).then(
          () => false,
          () => true,
        ),
      { timeout: 30_000 },
    )
  })
})
