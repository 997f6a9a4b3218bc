import { stateOf } from '@bayledger/ledger/append'
import { composeReportContent, type ReportContext } from '@bayledger/report/compose-content'
import type { ReportContent } from '@bayledger/report/content'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { LanguageCode } from '@bayledger/wording/language'
import { photoSize } from '../../../../prisma/seeds/demo/photos.ts'
import { type DemoShop, demoShop } from '../../../../prisma/seeds/demo-shop.ts'
import { presentShopHead } from '../features/settings/present.ts'

const demoDay = '2026-01-12T11:40:00-05:00'

/**
 * The report of one of the demo's finished orders, made without a server or a database.
 *
 * @throws Error if the demo has no finished order of that number.
 */
export const demoReport = (orderNumber: string, language: LanguageCode = 'en'): ReportContent => {
  const shop = demoShop(demoDay)
  const order = [...shop.orders, ...shop.earlier].find(({ number }) => number === orderNumber)
  if (!order?.end) throw new Error(`The demo has no finished order ${orderNumber}.`)
  const state = stateOf(order.entries, shop.shop.id, order.orderId)
  return composeReportContent(state, {
    ...contextOf(shop, order, order.end.sealedAt),
    language: customerLanguages[language],
  })
}

const contextOf = (
  shop: DemoShop,
  order: DemoShop['orders'][number],
  composedAt: string,
): Omit<ReportContext, 'language'> => {
  const opened = order.entries.find((entry) => entry.kind === 'order.opened')
  const vehicle = shop.vehicles.find(({ id }) => id === opened?.payload.vehicleId)
  const customer = shop.customers.find(({ id }) => id === opened?.payload.customerId)
  if (!vehicle || !customer)
    throw new Error(`Order ${order.number} names a vehicle or customer that the demo lacks.`)
  const head = presentShopHead(shop.settings)
  return {
    reportNumber: `${order.number}-R1`,
    composedAt,
    timeZone: shop.home.timeZone,
    checkAddress: 'https://desk.tamberstreet.example/check',
    sealKey: null,
    stamp: null,
    templateVersion: 1,
    supersedes: null,
    shop: { name: shop.shop.name, lines: head.lines, telephone: head.telephone, says: head },
    vehicle: {
      description: vehicle.description,
      plate: vehicle.plate,
      vinLastSix: vehicle.vin.slice(-6),
    },
    customerName: customer.name,
    texts: Object.fromEntries(
      order.lines.flatMap(({ sides }) => sides.map(({ digest, text }) => [digest, text])),
    ),
    staff: Object.fromEntries(shop.staff.map(({ id, name }) => [id, name])),
    money: order.money,
    photosReceived: new Set(order.photos.map(({ digest }) => digest)),
    pictures: new Map(order.photos.map(({ digest, bytes }) => [digest, { bytes, ...photoSize }])),
  }
}
