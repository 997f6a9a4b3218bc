import type { FirstShopContent } from '@bayledger/contract/first-shop'
import { firstHours } from '../../prisma/seeds/first-settings.ts'

/** A shop as its owner types it on the first page; invented. */
export const cornerTire: FirstShopContent = {
  shopName: 'Corner Tire',
  placeName: 'Corner Street',
  timeZone: 'America/New_York',
  altitudeFeet: 820,
  hours: firstHours,
  prices: { laborCentsPerHour: 11_000, taxRatePercentThousandths: 5_500, taxedClasses: ['parts', 'tire'] },
  owner: { name: 'A. Owner', signInName: 'owner', password: 'a quiet corner', pin: '418203' },
}
