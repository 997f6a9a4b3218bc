import { createHmac, randomBytes, randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { openPool } from '@bayledger/db/pool'
import type { Pool } from 'pg'
import { people } from '../../prisma/seeds/demo/people.ts'
import { startService } from '../support/start-service.ts'
import { type Connection, openConnection } from './connection.ts'
import { type Listener, openListener } from './listener.ts'

/** The demo shop at work: the service in a process of its own, on a PostgreSQL that flushes every commit. */
export type RunningShop = {
  readonly address: string
  /** The database, as the service reaches it. */
  readonly serviceUrl: string
  /** The same PostgreSQL, for the bare statements that the service is measured against. */
  readonly pool: Pool
  /** Connections of somebody who is signed in at the desk; closed with the shop. */
  readonly desks: (count: number) => Promise<readonly Connection[]>
  /** Live streams of as many screens, of as many sessions as it takes. */
  readonly listen: (count: number) => Promise<readonly Listener[]>
  /** New orders, open and otherwise empty; gives their ids. */
  readonly openOrders: (count: number) => Promise<readonly string[]>
}

/** Starts the shop, hands it to `work`, and stops it whatever happens. */
export const withRunningShop = async <T>(work: (shop: RunningShop) => Promise<T>): Promise<T> => {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-bench-'))
  const postgres = await startEmbeddedPostgres({ dataFolder, progress: (line) => console.error(line) })
  process.env.CALLS_PER_MINUTE = '100000000'
  // Each screen signs in from an address of its own: one address may try it twenty times a minute.
  process.env.TRUST_PROXY = 'loopback'
  const service = await startService(postgres)
  const pool = openPool({ url: postgres.ownerUrl, size: 32, onIdleError: () => undefined })
  const opened: { readonly close: () => void }[] = []
  try {
    const cookie = await signIn(service.address)
    const desks: RunningShop['desks'] = async (count) => {
      const made = await Promise.all(
        Array.from({ length: count }, () => openConnection(service.address, cookie)),
      )
      opened.push(...made)
      return made
    }
    const listen = async (count: number) => {
      const made: Listener[] = []
      while (made.length < count) {
        const own = await signIn(service.address, made.length)
        const streams = Math.min(mostOfSession, count - made.length)
        made.push(
          ...(await Promise.all(Array.from({ length: streams }, () => openListener(service.address, own)))),
        )
      }
      opened.push(...made)
      return made
    }
    return await work({
      address: service.address,
      serviceUrl: postgres.serviceUrl,
      pool,
      desks,
      listen,
      openOrders: (count) => openOrders(desks, count),
    })
  } finally {
    for (const connection of opened) connection.close()
    await pool.end()
    await service.stop()
    await postgres.stop()
    rmSync(dataFolder, { recursive: true, force: true })
  }
}

/** The service ends the oldest stream of a session that opens more (`http/live-streams.ts`). */
const mostOfSession = 6

/** Signs in at the desk; `screen` numbers the address that it is done from. */
const signIn = async (address: string, screen = 0): Promise<string> => {
  const { signInName, password } = people.ottoline
  const reply = await fetch(`${address}/api/sessions/desk`, {
    method: 'POST',
    headers: {
      'content-type': 'application/json',
      'sec-fetch-site': 'same-origin',
      'x-forwarded-for': `10.0.${screen >> 8}.${screen & 255}`,
    },
    body: JSON.stringify({ name: signInName, password }),
  })
  if (!reply.ok) throw new Error(`the sign-in was answered ${reply.status}: ${await reply.text()}`)
  return reply.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0])
    .join('; ')
}

/** New orders are written by so many at once. */
const mostWriters = 16

/** Opens orders for a customer and a vehicle that an order of the demo has. */
const openOrders = async (desks: RunningShop['desks'], count: number): Promise<readonly string[]> => {
  const [desk] = await desks(1)
  if (!desk) throw new Error('no desk')
  const [first] = JSON.parse((await desk.call('GET', '/api/floor')).body).rows
  const { entries } = JSON.parse((await desk.call('GET', `/api/orders/${first.orderId}`)).body)
  const { kind, version } = entries[0]
  // Nobody read the odometer: what it may be depends on the vehicle's other visits.
  const payload = { ...entries[0].payload, odometer: null }
  const orderIds = Array.from({ length: count }, () => randomUUID())
  const writers = await desks(Math.min(count, mostWriters))
  await Promise.all(
    writers.map(async (writer, index) => {
      for (let at = index; at < count; at += writers.length)
        await deliver(writer, { id: randomUUID(), orderId: orderIds[at] ?? '', kind, version, payload }, [])
    }),
  )
  return orderIds
}

/** Words of a note, sealed: the digest that its entry names, and what it stands for. */
type SealedNote = { readonly digest: string; readonly salt: string; readonly text: string }

const sealedNote = (): SealedNote => {
  const salt = randomBytes(32)
  const text = 'The customer called.'
  return {
    digest: createHmac('sha256', salt).update(text).digest('hex'),
    salt: salt.toString('base64'),
    text,
  }
}

/** Each desk seals its notes on its own machine, so what that costs is not the service's: they are sealed ahead. */
const sealedAhead: SealedNote[] = []

export const sealNotes = (count: number): void => {
  while (sealedAhead.length < count) sealedAhead.push(sealedNote())
}

/** Writes one note to an order, as the desk does. */
export const addNote = (desk: Connection, orderId: string): Promise<void> => {
  const note = sealedAhead.pop() ?? sealedNote()
  const entry = { id: randomUUID(), orderId, kind: 'note.added', version: 1, payload: { words: note.digest } }
  return deliver(desk, entry, [note])
}

const deliver = async (desk: Connection, entry: object, sides: readonly object[]): Promise<void> => {
  const entries = [{ ...entry, writtenAt: new Date().toISOString(), restsOn: [] }]
  const { body } = await desk.call('POST', '/api/entries', { entries, sides })
  const result = JSON.parse(body).results?.[0]?.result
  if (result !== 'accepted') throw new Error(`the entry was not accepted: ${body}`)
}
