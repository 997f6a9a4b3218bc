import type { FirstShopContent } from '@bayledger/contract/first-shop'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { seedBase } from '../../../../../prisma/seeds/base.ts'
import { firstHours } from '../../../../../prisma/seeds/first-settings.ts'
import { AppError } from '../../core/app-error.ts'
import type { CalledFrom } from '../../core/called-from.ts'
import { refuseEasyPassword, refuseEasyPin } from '../../core/easy-secrets.ts'
import type { Parts } from '../../deps.ts'
import { hashPassword } from '../sessions/service/hash-password.ts'
import { refuseUnlessHere } from './policy.ts'
import { hasAnyShop } from './store.ts'

/** What the page begins with while the database is empty. @throws FIRST_PAGE_ELSEWHERE */
export const getFirstShop = async (parts: Parts, from: CalledFrom) => {
  if (await hasAnyShop(parts.prisma)) return { state: 'made' } as const
  refuseUnlessHere(from)
  const { laborCentsPerHour, taxRatePercentThousandths, taxedClasses } = firstPrices
  return {
    state: 'open',
    hours: firstHours,
    prices: { laborCentsPerHour, taxRatePercentThousandths, taxedClasses },
  } as const
}

/**
 * Makes the one shop of an empty database.
 * @throws SHOP_MADE_BEFORE, FIRST_PAGE_ELSEWHERE, PIN_UNSUITABLE, PASSWORD_UNSUITABLE
 */
export const makeFirstShop = async (
  parts: Parts,
  from: CalledFrom,
  { shopName, placeName, timeZone, altitudeFeet, hours, prices, owner }: FirstShopContent,
): Promise<{ shopId: string }> => {
  refuseUnlessHere(from)
  if (await hasAnyShop(parts.prisma)) throw new AppError({ code: 'SHOP_MADE_BEFORE' })
  refuseEasyPin(owner.pin)
  await refuseEasyPassword(owner.password)
  const seeded = await seedBase({
    prisma: parts.prisma,
    now: parts.clock.now().toISOString(),
    shop: { name: shopName, placeName, altitudeFeet, timeZone, hours },
    owner,
    prices,
    hashPassword,
  })
  if (!seeded.made) throw new AppError({ code: 'SHOP_MADE_BEFORE' })
  return { shopId: seeded.shopId }
}
