import type { PrismaClient } from '@bayledger/db/client'
import { openClient } from '@bayledger/db/client'
import { PriceList } from '@bayledger/reckoning/money/price-list'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hashPassword, passwordMatches } from '../../apps/api/src/features/sessions/service/hash-password.ts'
import { seedBase } from '../../prisma/seeds/base.ts'
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

const seed = (signInName: string) =>
  seedBase({
    prisma,
    now: '2026-03-02T08:00:00.000Z',
    shop: { name: 'Millrace Road', altitudeFeet: 790, timeZone: 'America/New_York' },
    owner: { name: 'Marguerite Ashby-Bell', signInName },
    hashPassword,
  })

describe('the first start without the demo', () => {
  it('makes one shop, its owner and first settings, and prints the password once', async () => {
    const made = await seed('marguerite')
    expect(made).toMatchObject({ made: true })
    if (!made.made) return
    const [staff, locations, settings] = [
      await prisma.staff.findMany(),
      await prisma.location.findMany(),
      await prisma.settingVersion.findMany({ orderBy: { kind: 'asc' } }),
    ]
    expect(staff).toMatchObject([{ shopId: made.shopId, roles: ['owner'], signInName: 'marguerite' }])
    expect(await passwordMatches(made.ownerPassword, staff[0]?.passwordHash ?? '')).toBe(true)
    expect(locations).toMatchObject([
      { altitudeFeet: 790, lawProfile: { overrun: { kind: 'none' }, confirmedOn: null } },
    ])
    expect(settings.map(({ kind }) => kind)).toEqual(['prices', 'thresholds'])
    expect(PriceList.safeParse(settings[0]?.body).success).toBe(true)
    expect(await prisma.orderHead.count()).toBe(0)
  })

  it('leaves a shop that is there as it is', async () => {
    expect(await seed('somebody.else')).toEqual({ made: false })
    expect(await prisma.shop.count()).toBe(1)
    expect(await prisma.staff.count()).toBe(1)
  })
})
