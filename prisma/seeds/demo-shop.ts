import { type DemoCalendar, demoCalendar } from './demo/calendar.ts'
import { customers, vehicles } from './demo/customers.ts'
import { earlierOrders } from './demo/earlier.ts'
import { instruments } from './demo/instruments.ts'
import { demoOrders } from './demo/orders.ts'
import { people } from './demo/people.ts'
import {
  type DemoLocation,
  millraceRoad,
  shopId,
  tabletId,
  tabletNumbers,
  tamberStreet,
} from './demo/places.ts'
import { settings } from './demo/settings.ts'
import { sheets } from './demo/sheets.ts'
import { stock } from './demo/stock.ts'
import type { DemoOrder } from './demo/written-order.ts'

export type DemoShop = {
  readonly calendar: DemoCalendar
  readonly shop: { readonly id: string; readonly name: string; readonly town: string }
  readonly locations: readonly DemoLocation[]
  /** The location of the demo's orders, instruments and stock. */
  readonly home: DemoLocation
  readonly tablets: readonly { readonly id: string; readonly name: string; readonly locationId: string }[]
  readonly staff: readonly (typeof people)[keyof typeof people][]
  readonly customers: typeof customers
  readonly vehicles: typeof vehicles
  readonly sheets: readonly (typeof sheets)[keyof typeof sheets][]
  readonly settings: typeof settings
  readonly instruments: ReturnType<typeof instruments>
  readonly stock: ReturnType<typeof stock>
  /** The series of order numbers and the number that the next order gets. */
  readonly numbering: { readonly series: string; readonly next: number }
  /** Finished orders of earlier days that the demo's own rest on. */
  readonly earlier: readonly DemoOrder[]
  readonly orders: readonly DemoOrder[]
}

/**
 * The fictional Tamber Street Tire & Wheel in mid-morning: a pure function. `now` is the instant that plays 11:40 of
 * the demo day, with its offset or Z; every date is shifted by the same amount, nothing else changes.
 */
export const demoShop = (now: string): DemoShop => {
  const calendar = demoCalendar(now)
  const register = instruments(calendar)
  const earlier = earlierOrders(calendar, register)
  return {
    calendar,
    shop: { id: shopId, name: 'Tamber Street Tire & Wheel', town: 'Brindle Falls' },
    locations: [tamberStreet, millraceRoad],
    home: tamberStreet,
    tablets: tabletNumbers.map((number) => ({
      id: tabletId(number),
      name: `Bay ${number}`,
      locationId: tamberStreet.id,
    })),
    staff: Object.values(people),
    customers,
    vehicles,
    sheets: Object.values(sheets),
    settings,
    instruments: register,
    stock: stock(calendar),
    numbering: { series: 'T', next: 2_621 },
    earlier,
    orders: demoOrders(calendar, register, earlier),
  }
}
