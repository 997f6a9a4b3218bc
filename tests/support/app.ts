import { rmSync } from 'node:fs'
import type { Server } from 'node:http'
import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import request, { type Test } from 'supertest'
import { buildApp } from '../../apps/api/src/app.ts'
import { type Carriers, noCarriers } from '../../apps/api/src/carriers/carrier.ts'
import { type Deps, forShop, type Parts, type Signing, type Stamping } from '../../apps/api/src/deps.ts'
import { hashPassword } from '../../apps/api/src/features/sessions/service/hash-password.ts'
import { startLiveHub } from '../../apps/api/src/http/live.ts'
import { messageKeeper } from '../../apps/api/src/message-keeper.ts'
import { keepPrivacy } from '../../apps/api/src/privacy-keeper.ts'
import { passingSealingKey } from '../../apps/api/src/sealing-key.ts'
import { noStamping } from '../../apps/api/src/stamping/stamping.ts'
import { type PersonKey, people } from '../../prisma/seeds/demo/people.ts'
import { type DemoShop, demoShop } from '../../prisma/seeds/demo-shop.ts'
import { createTestDatabase, type Template } from './database.ts'
import { ownDigestPlaces } from './digest-places.ts'
import { noBackups } from './no-backups.ts'
import { alwaysSealsWith } from './seals-with.ts'
import { loadShopWithoutOrders } from './shop-without-orders.ts'
import { makeTabletKey, type TabletKey } from './tablet-key.ts'

/** 11:40 of the demo day at the shop. */
export const demoNow = '2026-01-12T16:40:00.000Z'

export type Method = 'get' | 'post' | 'put' | 'delete'

/** Calls the service as a given person, from a page of its own. */
export type Caller = {
  readonly call: (method: Method, path: string, headers?: Record<string, string>) => Test
  readonly get: (path: string) => Test
  readonly post: (path: string, body?: object, headers?: Record<string, string>) => Test
  readonly put: (path: string, body: object, headers?: Record<string, string>) => Test
  readonly delete: (path: string) => Test
  readonly cookies: readonly string[]
}

export type TestApp = {
  readonly parts: Parts
  readonly deps: Deps
  readonly demo: DemoShop
  /** The database as the service reaches it, and as its owner does. */
  readonly url: string
  readonly ownerUrl: string
  /** As a superuser of the database, who may do anything to it. */
  readonly adminUrl: string
  readonly server: Server
  /** The service itself, for a call from an address of another machine. */
  readonly inject: Awaited<ReturnType<typeof buildApp>>['inject']
  readonly clock: {
    readonly now: () => Date
    readonly set: (instant: string) => void
    readonly advance: (ms: number) => void
  }
  readonly nobody: Caller
  readonly hashPassword: (password: string) => Promise<string>
  readonly withCookies: (cookies: readonly string[]) => Caller
  readonly desk: (person: PersonKey) => Promise<Caller>
  readonly tablet: () => Promise<TestTablet>
  /** One round of the outbox; gives how many messages were tried. */
  readonly deliver: () => Promise<number>
  /** One round of what erases by itself. */
  readonly erase: () => Promise<void>
  /** Another process on the same database writes something. */
  readonly writeElsewhere: () => Promise<void>
  /** Takes the database away for good. */
  readonly loseDatabase: () => Promise<void>
  readonly stop: () => Promise<void>
}

export type TestTablet = Caller & {
  readonly deviceId: string
  readonly key: TabletKey
  readonly signIn: (person: PersonKey) => Promise<Caller>
}

/** For all files of a worker: an order of it is written once. */
const demo = demoShop(demoNow)

/** The demo shop without orders. */
const shopWithoutOrders: Template = {
  name: 'shop',
  beginsWith: 'migrated',
  fill: (database) => loadShopWithoutOrders(database.serviceUrl, demoNow),
}

/**
 * The real service on a real database of its own: people, customers, vehicles, sheets, prices and instruments of the
 * demo shop, and no orders; or, on a `migrated` database, no shop at all. Time does not move until a test moves it.
 */
export const startTestApp = async (
  content: 'migrated' | Template = shopWithoutOrders,
  carriers: Carriers = noCarriers,
  signingOn?: (place: Pick<Parts, 'pool' | 'clock'>) => Signing,
  stamping: Stamping = noStamping,
): Promise<TestApp> => {
  const database = await createTestDatabase(content)
  const pool = openPool({ url: database.serviceUrl, size: 6, onIdleError: () => undefined })
  const prisma = openClient(pool)
  let now = Date.parse(demoNow)
  const clock = {
    now: () => new Date(now),
    set: (instant: string) => {
      now = Date.parse(instant)
    },
    advance: (ms: number) => {
      now += ms
    },
  }
  const signing = await createSigningIdentity({
    commonName: demo.shop.name,
    notBefore: '2026-01-01T00:00:00.000Z',
    days: 30,
  })
  const live = await startLiveHub(database.serviceUrl, () => undefined)
  const parts: Parts = {
    prisma,
    pool,
    clock,
    tls: false,
    publicAddress: 'http://localhost:4310',
    signing: signingOn?.({ pool, clock }) ?? alwaysSealsWith(signing),
    sealing: await passingSealingKey(),
    stamping,
    live,
    carriers,
    backups: () => noBackups,
    loading: new Set(),
    digestPlaces: ownDigestPlaces(),
  }
  const app = await buildApp({
    parts,
    logger: false,
    webFolder: null,
    callsPerMinute: 100_000,
    checksEveryReply: true,
  })
  await app.ready()
  const server = app.server as Server
  const withCookies = (cookies: readonly string[]) => callerOf(server, cookies)
  const desk = async (person: PersonKey): Promise<Caller> => {
    const { signInName, password } = people[person]
    const reply = await withCookies([]).post('/api/sessions/desk', { name: signInName, password }).expect(201)
    return withCookies(cookiesIn(reply))
  }
  return {
    parts,
    deps: forShop(parts, demo.shop.id),
    demo,
    url: database.serviceUrl,
    ownerUrl: database.url,
    adminUrl: database.adminUrl,
    server,
    inject: app.inject.bind(app),
    clock,
    hashPassword,
    nobody: withCookies([]),
    withCookies,
    desk,
    tablet: async () => enrolledTablet(withCookies, await desk('ottoline'), demo.home.id),
    deliver: () =>
      messageKeeper(parts, (_words, error) => {
        throw error
      }).deliver(),
    erase: () =>
      keepPrivacy(parts, (words, error) => {
        throw error ?? new Error(words)
      }).look(),
    writeElsewhere: async () => {
      const other = await startLiveHub(database.serviceUrl, () => undefined)
      other.wrote(demo.shop.id, 'tray')
      await other.close()
    },
    loseDatabase: () => {
      const name = new URL(database.url).pathname.slice(1)
      const elsewhere = new URL(database.adminUrl)
      elsewhere.pathname = '/postgres'
      return withClient(elsewhere.href, async (client) => {
        await client.query(`alter database ${name} allow_connections false`)
        await client.query('select pg_terminate_backend(pid) from pg_stat_activity where datname = $1', [
          name,
        ])
      })
    },
    stop: async () => {
      await app.close()
      await live.close().catch(() => undefined)
      await prisma.$disconnect()
      await pool.end()
      await database.drop()
      rmSync(parts.digestPlaces.dataFolder, { recursive: true, force: true })
    },
  }
}

const enrolledTablet = async (
  withCookies: TestApp['withCookies'],
  desk: Caller,
  locationId: string,
): Promise<TestTablet> => {
  const { body } = await desk.post('/api/enrollment-codes', { locationId }).expect(201)
  const key = makeTabletKey()
  const enrolled = await withCookies([])
    .post('/api/devices', { code: body.code, name: 'Bay 9', publicKey: key.publicKey })
    .expect(201)
  const device = cookiesIn(enrolled)
  return {
    ...withCookies(device),
    deviceId: enrolled.body.deviceId,
    key,
    signIn: async (person) => {
      const { id, pin } = people[person]
      const reply = await withCookies(device).post('/api/sessions/bay', { staffId: id, pin }).expect(201)
      return withCookies([...device, ...cookiesIn(reply)])
    },
  }
}

const callerOf = (server: Server, cookies: readonly string[]): Caller => {
  const call: Caller['call'] = (method, path, headers = {}) => {
    const started = request(server)[method](path).set('sec-fetch-site', 'same-origin')
    if (cookies.length > 0) started.set('cookie', cookies.join('; '))
    return started.set(headers)
  }
  return {
    cookies,
    call,
    get: (path) => call('get', path),
    post: (path, body, headers) =>
      body === undefined ? call('post', path, headers) : call('post', path, headers).send(body),
    put: (path, body, headers) => call('put', path, headers).send(body),
    delete: (path) => call('delete', path),
  }
}

/** `name=value` of every cookie that a reply sets. */
export const cookiesIn = (reply: { readonly headers: Record<string, unknown> }): string[] => {
  const set = reply.headers['set-cookie']
  return (Array.isArray(set) ? set : []).map((cookie: string) => cookie.split(';')[0] ?? '')
}
