import { openClient, type PrismaClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { noCarriers } from '../../apps/api/src/carriers/carrier.ts'
import { forShop, type Parts } from '../../apps/api/src/deps.ts'
import { getFloorPage } from '../../apps/api/src/features/floor/service.ts'
import { type LiveHub, startLiveHub } from '../../apps/api/src/http/live.ts'
import { passingSealingKey } from '../../apps/api/src/sealing-key.ts'
import { appendLines, beginDemo, endDemo, momentsOf } from '../../apps/api/src/seed-shop.ts'
import { loadYear } from '../../apps/api/src/seed-year.ts'
import { noStamping } from '../../apps/api/src/stamping/stamping.ts'
import { demoCalendar } from '../../prisma/seeds/demo/calendar.ts'
import { shopId } from '../../prisma/seeds/demo/places.ts'
import { type DemoShop, demoShop } from '../../prisma/seeds/demo-shop.ts'
import { type YearOrder, yearOfOrders } from '../../prisma/seeds/year.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'
import { ownDigestPlaces } from '../support/digest-places.ts'
import { noBackups } from '../support/no-backups.ts'
import { alwaysSealsWith } from '../support/seals-with.ts'

let database: TestDatabase
let pool: ReturnType<typeof openPool>
let prisma: PrismaClient
let live: LiveHub
let parts: Parts
let demo: DemoShop
/** The orders that were there before the rest. */
let first: readonly string[]
const whole: string[] = []

beforeAll(async () => {
  database = await createTestDatabase()
  pool = openPool({ url: database.url, size: 4, onIdleError: () => undefined })
  prisma = openClient(pool)
  live = await startLiveHub(database.url, (words, cause) => {
    throw new Error(words, { cause })
  })
  const signing = await createSigningIdentity({
    commonName: 'Tamber Street Tire & Wheel',
    notBefore: '2025-01-01T00:00:00.000Z',
    days: 500,
  })
  const sealing = await passingSealingKey()
  const clock = { now: () => new Date('2026-01-12T16:40:00.000Z') }
  const publicAddress = 'http://localhost:4310'
  parts = {
    prisma,
    pool,
    clock,
    tls: false,
    publicAddress,
    signing: alwaysSealsWith(signing),
    sealing,
    live,
    carriers: noCarriers,
    stamping: noStamping,
    backups: () => noBackups,
    loading: new Set(),
    digestPlaces: ownDigestPlaces(),
  }
  demo = demoShop(parts.clock.now().toISOString())
  await beginDemo(parts, shopId, demo)
  first = (await prisma.orderHead.findMany({ select: { number: true } })).map(({ number }) => number)
  await endDemo(parts, shopId, demo, (orderId) => whole.push(orderId))
})

afterAll(async () => {
  await live.close()
  await prisma.$disconnect()
  await pool.end()
  await database.drop()
})

const all = () => [...demo.earlier, ...demo.orders]
const chainOf = (orderId: string) =>
  prisma.entry.findMany({ where: { orderId }, orderBy: { seq: 'asc' }, select: { kind: true, hash: true } })

describe('the demo, loaded through the service', () => {
  it('begins with what is in the works, then has what has ended, each until it is whole', () => {
    const later = all().filter(({ end, after }) => end !== null || after !== null)
    expect(later.map(({ number }) => number)).toContain('T-2601')
    expect(first.toSorted()).toEqual(
      all()
        .filter((order) => !later.includes(order))
        .map(({ number }) => number)
        .toSorted(),
    )
    expect(whole.toSorted()).toEqual(later.map(({ orderId }) => orderId).toSorted())
  })

  it('has the very chains that the ledger makes in memory', async () => {
    for (const { number, orderId, entries } of all())
      expect((await chainOf(orderId)).slice(0, entries.length), number).toEqual(
        entries.map(({ kind, hash }) => ({ kind, hash })),
      )
  })

  it('seals and hands back what is finished, and nothing else', async () => {
    for (const { number, orderId, entries, end } of all()) {
      const after = (await chainOf(orderId)).slice(entries.length).map(({ kind }) => kind)
      expect(after, number).toEqual(end ? ['report.sealed', 'order.handed_back'] : [])
      const head = await prisma.orderHead.findFirstOrThrow({ where: { orderId } })
      const isEnded = ['order.refused', 'order.withdrawn'].includes(entries.at(-1)?.kind ?? '')
      expect(head).toMatchObject({ number, isOpen: end === null && !isEnded, sealed: end !== null })
    }
  })

  it('keeps every side beside the chains: words, contacts, money, and what was shown', async () => {
    const sides = all().flatMap(({ lines, end }) =>
      [...lines, ...(end ? [end.handBack] : [])].flatMap(({ sides }) => sides),
    )
    const select = { digest: true, text: true } as const
    const kept = [
      ...(await prisma.personalText.findMany({ select })),
      ...(await prisma.contactSide.findMany({ select })),
      ...(await prisma.moneySide.findMany({ select })),
      ...(await prisma.shownSide.findMany({ select })),
    ]
    expect(kept).toEqual(expect.arrayContaining(sides.map(({ digest, text }) => ({ digest, text }))))
    expect(kept.length).toBe(sides.length)
  })

  it('has received every photo, each with a copy for viewing', async () => {
    const taken = all().flatMap(({ photos }) => photos.map(({ digest }) => digest))
    expect(taken.length).toBeGreaterThanOrEqual(5)
    const received = await prisma.receivedPhoto.findMany({ select: { digest: true } })
    expect(new Set(received.map(({ digest }) => digest))).toEqual(new Set(taken))
    expect(await prisma.photoPiece.count()).toBe(0)
  })

  it('shows the link of T-2602 as opened once', async () => {
    const links = await prisma.customerLink.findMany({ include: { openings: true } })
    expect(links.map(({ openings }) => openings.map(({ openedAt }) => openedAt.toISOString()))).toEqual([
      ['2026-01-12T14:20:00.000Z'],
    ])
  })

  it('gives the next order the number after the demo', async () => {
    expect(await prisma.orderNumber.findMany()).toMatchObject([{ series: 'T', next: 2_621 }])
  })

  it('is refused in a database that holds a shop', async () => {
    await expect(beginDemo(parts, shopId, demo)).rejects.toThrow('already holds a shop')
  })
})

describe('the year before it, loaded behind the service', () => {
  const firstOrders = (most: number): YearOrder[] => {
    const orders: YearOrder[] = []
    for (const order of yearOfOrders(demoCalendar('2026-01-12T16:40:00.000Z')))
      if (orders.push(order) === most) break
    return orders
  }
  const notWhole = new Set<string>()
  const loading = (most?: number) =>
    loadYear({
      ...{ parts, shopId, loading: notWhole, say: () => undefined, finishDay: null },
      hastily: async (ours, work) => void (await work(ours)),
      ...(most === undefined ? {} : { most }),
    })
  const loadFirst = (most: number) => loading(most).done

  it('goes on after a stop in the middle, has the very chains of memory, and never doubles', async () => {
    await loadFirst(4)
    const before = await prisma.entry.count()
    await loadFirst(4)
    expect(await prisma.entry.count()).toBe(before)
    await loadFirst(10)
    for (const { number, orderId, entries, end } of firstOrders(10)) {
      const chain = await chainOf(orderId)
      expect(chain.slice(0, entries.length), number).toEqual(
        entries.map(({ kind, hash }) => ({ kind, hash })),
      )
      expect(
        chain.slice(entries.length).map(({ kind }) => kind),
        number,
      ).toEqual(['report.sealed', 'order.handed_back'])
      const head = await prisma.orderHead.findFirstOrThrow({ where: { orderId } })
      expect(head).toMatchObject({ number, isOpen: false, sealed: true })
      expect(head.openedAt.toISOString()).toBe(end && entries[0]?.receivedAt)
    }
  })

  it('keeps an order off the floor until it is loaded to its end', async () => {
    const [order] = firstOrders(11).slice(10)
    if (!order) throw new Error('the year has fewer orders')
    await prisma.customer.create({ data: { shopId, ...order.customer } })
    await prisma.vehicle.create({ data: { shopId, ...order.vehicle } })
    await appendLines(momentsOf(parts, shopId), order.lines.slice(0, 3))
    const isOnFloor = async (loading: ReadonlySet<string>) => {
      const { rows } = await getFloorPage(forShop({ ...parts, loading }, shopId), {})
      return rows.some(({ orderId }) => orderId === order.orderId)
    }
    expect(await isOnFloor(new Set())).toBe(true)
    // It is loaded to its end after the floor was read and before it is shown.
    const brief = new Set([order.orderId])
    const asked = isOnFloor(brief)
    brief.clear()
    expect(await asked).toBe(false)
    const done = loadFirst(11)
    expect(await isOnFloor(notWhole)).toBe(false)
    await done
    expect(notWhole.has(order.orderId)).toBe(false)
    expect(await isOnFloor(notWhole)).toBe(false)
  })

  it('ends after the order in hand when the service stops', async () => {
    await loading().stop()
    const open = await prisma.orderHead.count({ where: { isOpen: true, number: { lt: 'T-2601' } } })
    expect(open).toBe(0)
    expect(await prisma.settingVersion.count({ where: { kind: 'demo-year-loaded' } })).toBe(0)
  })
})
