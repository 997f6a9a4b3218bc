import { randomBytes, randomUUID } from 'node:crypto'
import type { PrismaClient } from '@bayledger/db/generated/client'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { firstThresholds, strictestLaw } from './first-settings.ts'

/** What an empty shop starts from. */
export type BaseSeeding = {
  readonly prisma: PrismaClient
  /** UTC text. */
  readonly now: string
  readonly shop: { readonly name: string; readonly altitudeFeet: number; readonly timeZone: string }
  readonly owner: { readonly name: string; readonly signInName: string }
  readonly hashPassword: (password: string) => Promise<string>
  /** Adds the shop beside those that the database holds already. */
  readonly besideOthers?: boolean
}

export type BaseSeeded =
  | { readonly made: true; readonly shopId: string; readonly ownerPassword: string }
  | { readonly made: false }

/**
 * What production needs: a shop with one location, first settings to be edited, and an owner whose password is made
 * here and shown once. A database that already holds a shop is left as it is unless another is wanted beside it.
 */
export const seedBase = async ({
  prisma,
  now,
  shop,
  owner,
  hashPassword,
  besideOthers = false,
}: BaseSeeding): Promise<BaseSeeded> => {
  if (!besideOthers && (await prisma.shop.count()) > 0) return { made: false }
  const shopId = randomUUID()
  const ownerPassword = randomBytes(12).toString('base64url')
  const passwordHash = await hashPassword(ownerPassword)
  const createdBy = { kind: 'system' }
  await prisma.$transaction([
    prisma.shop.create({ data: { id: shopId, name: shop.name, createdAt: now } }),
    prisma.location.create({
      data: {
        shopId,
        id: randomUUID(),
        name: shop.name,
        altitudeFeet: shop.altitudeFeet,
        timeZone: shop.timeZone,
        lawProfile: strictestLaw,
      },
    }),
    prisma.staff.create({
      data: {
        shopId,
        id: randomUUID(),
        name: owner.name,
        signInName: owner.signInName,
        roles: ['owner'],
        passwordHash,
      },
    }),
    prisma.settingVersion.createMany({
      data: [
        { kind: 'prices', body: firstPrices },
        { kind: 'thresholds', body: firstThresholds },
      ].map((setting) => ({ shopId, id: randomUUID(), version: 1, ...setting, createdBy, createdAt: now })),
    }),
    prisma.orderNumber.create({ data: { shopId, series: 'T', next: 1 } }),
  ])
  return { made: true, shopId, ownerPassword }
}
