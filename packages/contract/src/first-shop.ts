import { TaxClass } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, line, SignInName } from './identity.ts'
import { PlaceContent } from './places.ts'

/** What the price book of a new shop begins with, beside the first prices of the trade. */
const FirstPrices = z.strictObject({
  laborCentsPerHour: z.int().check(z.gte(0), z.lte(10_000_000)),
  taxRatePercentThousandths: z.int().check(z.gte(0), z.lte(50_000)),
  taxedClasses: z.array(TaxClass),
})

/** A shop with its first place and its owner. Altitude in feet. PIN and password are judged when they come. */
export const FirstShopContent = z.strictObject({
  shopName: line(120),
  placeName: PlaceContent.shape.name,
  timeZone: PlaceContent.shape.timeZone,
  altitudeFeet: PlaceContent.shape.altitudeFeet,
  hours: PlaceContent.shape.hours,
  prices: FirstPrices,
  owner: z.strictObject({
    name: line(80),
    signInName: SignInName,
    password: z.string().check(z.maxLength(200)),
    pin: z.string().check(z.maxLength(20)),
  }),
})
export type FirstShopContent = z.infer<typeof FirstShopContent>

export const getFirstShop = endpoint({
  operationId: 'getFirstShop',
  summary: 'Whether a shop can be made here: only in an empty database, only from the machine itself.',
  method: 'GET',
  path: '/api/first-shop',
  access: { who: 'public' },
  replies: {
    200: z.discriminatedUnion('state', [
      z.strictObject({ state: z.literal('open'), hours: PlaceContent.shape.hours, prices: FirstPrices }),
      z.strictObject({ state: z.literal('made') }),
    ]),
  },
  problems: ['FIRST_PAGE_ELSEWHERE'],
})

export const makeFirstShop = endpoint({
  operationId: 'makeFirstShop',
  summary: 'Make the shop of an empty database, from the machine itself.',
  method: 'POST',
  path: '/api/first-shop',
  access: { who: 'public' },
  body: FirstShopContent,
  triesPerMinute: 20,
  replies: { 201: z.strictObject({ shopId: Id }) },
  problems: ['FIRST_PAGE_ELSEWHERE', 'SHOP_MADE_BEFORE', 'PIN_UNSUITABLE', 'PASSWORD_UNSUITABLE'],
})
