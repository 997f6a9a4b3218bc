import { createHmac, randomBytes, randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { Agent, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { openPool } from '@bayledger/db/pool'
import { listFloorRows } from '../../apps/api/src/features/floor/store.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { shopId } from '../../prisma/seeds/demo/places.ts'
import { startService } from '../support/start-service.ts'
import { interleave, sideBySide } from './interleave.ts'
import type { Line } from './table.ts'

const clients = 8

type Reply = { readonly status: number; readonly body: string; readonly cookies: readonly string[] }

/**
 * The service in a process of its own, as `npm start` runs it, against bare statements on the same PostgreSQL. That
 * one flushes every commit to disk, as a shop's does.
 */
export const benchService = async (): Promise<Line[]> => {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-bench-'))
  const postgres = await startEmbeddedPostgres({ dataFolder, progress: (line) => console.error(line) })
  process.env.CALLS_PER_MINUTE = '1000000'
  const service = await startService(postgres)
  const pool = openPool({ url: postgres.ownerUrl, size: clients, onIdleError: () => undefined })
  const agent = new Agent({ keepAlive: true, maxSockets: clients })
  try {
    const call = await signIn(service.address, agent)
    const open = (JSON.parse((await call('GET', '/api/floor')).body).rows as FloorRow[])
      .filter(({ isOpen }) => isOpen)
      .map(({ orderId }) => orderId)
    if (open.length < clients)
      throw new Error(`the demo has ${open.length} open orders; ${clients} are needed`)
    const note = (orderId: string) => () => addNote(call, orderId)

    await pool.query('create table bench_commits (id uuid primary key, words text not null)')
    const commit = () =>
      pool.query({
        name: 'bench-commit',
        text: 'insert into bench_commits (id, words) values ($1, $2)',
        values: [randomUUID(), 'The customer called.'],
      })
    const floorAsked = {
      locationId: null,
      endedAfter: new Date(Date.now() - 12 * 3_600_000),
      orderIds: null,
      after: null,
    }

    const one = await interleave(note(open[0] ?? ''), commit, { blocks: 10, block: 20, seconds: 8 })
    const bareBefore = await sideBySide(Array(clients).fill(commit), 40)
    const several = await sideBySide(open.slice(0, clients).map(note), 40)
    const bareAfter = await sideBySide(Array(clients).fill(commit), 40)
    const bareSeveral = bareBefore.perSecond > bareAfter.perSecond ? bareBefore : bareAfter
    const floor = await interleave(
      () => call('GET', '/api/floor'),
      () => listFloorRows(pool, shopId, floorAsked),
      { blocks: 15, block: 20, seconds: 8 },
    )
    const append = { what: 'POST /api/entries, a note', against: 'one-row commit', goal: null }
    const list = { what: 'GET /api/floor', against: 'its statement alone', ...floor }
    return [
      { ...append, ...one, of: 'p50' },
      {
        ...append,
        what: `the same, ${clients} clients and orders`,
        against: `the same, ${clients} clients`,
        ours: several,
        bare: bareSeveral,
        of: 'perSecond',
        goal: 0.45,
      },
      { ...list, of: 'p50', goal: 8 },
      { ...list, of: 'p99', goal: 5 },
    ]
  } finally {
    agent.destroy()
    await pool.end()
    await service.stop()
    await postgres.stop()
    rmSync(dataFolder, { recursive: true, force: true })
  }
}

type FloorRow = { readonly orderId: string; readonly isOpen: boolean }
type Call = (method: 'GET' | 'POST', path: string, body?: object) => Promise<Reply>

const signIn = async (address: string, agent: Agent): Promise<Call> => {
  const { signInName, password } = people.ottoline
  const nobody = caller(address, agent, '')
  const { cookies } = await nobody('POST', '/api/sessions/desk', { name: signInName, password })
  return caller(address, agent, cookies.map((cookie) => cookie.split(';')[0]).join('; '))
}

const addNote = async (call: Call, orderId: string): Promise<void> => {
  const salt = randomBytes(32)
  const text = 'The customer called.'
  const digest = createHmac('sha256', salt).update(text).digest('hex')
  const entry = { id: randomUUID(), orderId, kind: 'note.added', version: 1, payload: { words: digest } }
  const { body } = await call('POST', '/api/entries', {
    entries: [{ ...entry, writtenAt: new Date().toISOString(), restsOn: [] }],
    sides: [{ digest, salt: salt.toString('base64'), text }],
  })
  const result = JSON.parse(body).results?.[0]?.result
  if (result !== 'accepted') throw new Error(`the note was not accepted: ${body}`)
}

const caller =
  (address: string, agent: Agent, cookie: string): Call =>
  (method, path, body) =>
    new Promise((resolve, reject) => {
      const text = body === undefined ? '' : JSON.stringify(body)
      const headers = {
        'sec-fetch-site': 'same-origin',
        ...(cookie === '' ? {} : { cookie }),
        ...(text === ''
          ? {}
          : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(text) }),
      }
      const sent = request(new URL(path, address), { method, agent, headers }, (reply) => {
        let received = ''
        reply.setEncoding('utf8')
        reply.on('data', (chunk: string) => {
          received += chunk
        })
        reply.on('end', () => {
          const status = reply.statusCode ?? 0
          if (status >= 400) reject(new Error(`${method} ${path} answered ${status}: ${received}`))
          else resolve({ status, body: received, cookies: reply.headers['set-cookie'] ?? [] })
        })
      })
      sent.on('error', reject)
      sent.end(text)
    })
