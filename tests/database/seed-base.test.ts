import type { PrismaClient } from '@bayledger/db/client'
import { openClient } from '@bayledger/db/client'
import { PriceList } from '@bayledger/reckoning/money/price-list'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hashPassword, passwordMatches } from '../../apps/api/src/features/sessions/service/hash-password.ts'
import { seedBase } from '../../prisma/seeds/base.ts'
import { firstHours } from '../../prisma/seeds/first-settings.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

let database: TestDatabase
let prisma: PrismaClient

beforeAll(async () => {
  database = await createTestDatabase()
  prisma = openClient(database.url)
})

afterAll(async () => {
  await prisma.$disconnect()
  await database.drop()
})

const seed = (signInName: string, client = prisma) =>
  seedBase({
    prisma: client,
    now: '2026-03-02T08:00:00.000Z',
    shop: {
      name: 'Millrace Road',
      placeName: 'Millrace Road',
      altitudeFeet: 790,
      timeZone: 'America/New_York',
      hours: firstHours,
    },
    owner: { name: 'Marguerite Ashby-Bell', signInName, password: 'millrace-road', pin: '620591' },
    prices: { laborCentsPerHour: 9_900 },
    hashPassword,
  })

describe('the first start without the demo', () => {
  it('makes one shop, its owner and first settings', async () => {
    const made = await seed('marguerite')
    expect(made).toMatchObject({ made: true })
    if (!made.made) return
    const [staff, locations, settings] = [
      await prisma.staff.findMany(),
      await prisma.location.findMany(),
      await prisma.settingVersion.findMany({ orderBy: { kind: 'asc' } }),
    ]
    expect(staff).toMatchObject([{ shopId: made.shopId, roles: ['owner'], signInName: 'marguerite' }])
    expect(await passwordMatches('millrace-road', staff[0]?.passwordHash ?? '')).toBe(true)
    expect(await passwordMatches('620591', staff[0]?.pinHash ?? '')).toBe(true)
    expect(locations).toMatchObject([
      {
        altitudeFeet: 790,
        hours: firstHours,
        lawProfile: { overrun: { kind: 'none' }, confirmedOn: null },
      },
    ])
    expect(settings.map(({ kind }) => kind)).toEqual(['prices', 'thresholds'])
    expect(PriceList.parse(settings[0]?.body)).toMatchObject({ laborCentsPerHour: 9_900, version: 1 })
    expect(await prisma.orderHead.count()).toBe(0)
  })

  it('makes one of two that begin at once', async () => {
    const another = await createTestDatabase()
    const clients = [openClient(another.url), openClient(another.url)]
    const made = await Promise.all(clients.map((client) => seed('marguerite', client)))
    expect(made.map((one) => one.made).sort()).toEqual([false, true])
    expect(await clients[0]?.staff.count()).toBe(1)
    for (const client of clients) await client.$disconnect()
    await another.drop()
  })

  it('leaves a shop that is there as it is', async () => {
    expect(await seed('somebody.else')).toEqual({ made: false })
    expect(await prisma.shop.count()).toBe(1)
    expect(await prisma.staff.count()).toBe(1)
  })
})
