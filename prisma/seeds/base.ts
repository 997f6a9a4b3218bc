import { randomUUID } from 'node:crypto'
import type { PrismaClient } from '@bayledger/db/generated/client'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import { firstItems } from './first-items.ts'
import { firstThresholds, type OpeningHours, strictestLaw } from './first-settings.ts'

/** What an empty shop starts from. */
export type BaseSeeding = {
  readonly prisma: PrismaClient
  /** UTC text. */
  readonly now: string
  readonly shop: {
    readonly name: string
    readonly placeName: string
    readonly altitudeFeet: number
    readonly timeZone: string
    readonly hours: OpeningHours
  }
  readonly owner: {
    readonly name: string
    readonly signInName: string
    readonly password: string
    /** Until when it is taken, where the owner has not chosen it. */
    readonly firstPasswordUntil?: Date
    /** `null`: the owner sets one at the desk. */
    readonly pin: string | null
  }
  /** What the shop charges from the start; for the rest, see `firstPrices`. */
  readonly prices?: Partial<PriceList>
  readonly hashPassword: (password: string) => Promise<string>
  /** Adds the shop beside those that the database holds already. */
  readonly besideOthers?: boolean
}

export type BaseSeeded = { readonly made: true; readonly shopId: string } | { readonly made: false }

/**
 * What production needs: a shop with one place, first settings to be edited, and its owner. A database that already
 * holds a shop is left as it is unless another is wanted beside it; of two calls at once, in two processes too, the
 * second finds the shop of the first.
 */
export const seedBase = async ({
  prisma,
  now,
  shop,
  owner,
  prices = {},
  hashPassword,
  besideOthers = false,
}: BaseSeeding): Promise<BaseSeeded> => {
  const [passwordHash, pinHash] = await Promise.all([
    hashPassword(owner.password),
    owner.pin === null ? null : hashPassword(owner.pin),
  ])
  const shopId = randomUUID()
  const createdBy = { kind: 'system' }
  const { name, placeName, altitudeFeet, timeZone, hours } = shop
  return prisma.$transaction(async (tx) => {
    await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended('bayledger first shop', 0))`
    if (!besideOthers && (await tx.shop.count()) > 0) return { made: false }
    await tx.shop.create({ data: { id: shopId, name, createdAt: now } })
    await tx.location.create({
      data: {
        shopId,
        id: randomUUID(),
        name: placeName,
        altitudeFeet,
        timeZone,
        hours,
        lawProfile: strictestLaw,
      },
    })
    await tx.staff.create({
      data: {
        shopId,
        id: randomUUID(),
        name: owner.name,
        signInName: owner.signInName,
        roles: ['owner'],
        passwordHash,
        firstPasswordUntil: owner.firstPasswordUntil ?? null,
        pinHash,
      },
    })
    await tx.settingVersion.createMany({
      data: [
        { kind: 'prices', body: { ...firstPrices, items: [...firstItems], ...prices } },
        { kind: 'thresholds', body: firstThresholds },
      ].map((setting) => ({ shopId, id: randomUUID(), version: 1, ...setting, createdBy, createdAt: now })),
    })
    await tx.orderNumber.create({ data: { shopId, series: 'T', next: 1 } })
    return { made: true, shopId }
  })
}
