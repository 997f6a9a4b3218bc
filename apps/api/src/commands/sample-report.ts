import { writeFile } from 'node:fs/promises'
import { stateOf } from '@bayledger/ledger/append'
import { composeReportContent, type ReportContext } from '@bayledger/report/compose-content'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { sealReport } from '@bayledger/report/seal'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { type DemoShop, demoShop } from '../../../../prisma/seeds/demo-shop.ts'
import { presentShopHead } from '../features/settings/present.ts'

const usage = 'usage: npm run -s report:sample -- out.pdf [order]'
const demoDay = '2026-01-12T11:40:00-05:00'

/** Writes the sealed report of one of the demo's finished orders: no server, no database, and a key made for this one file. */
const writeSample = async (path: string, orderNumber: string): Promise<void> => {
  const shop = demoShop(demoDay)
  const order = shop.orders.find(({ number }) => number === orderNumber)
  if (!order?.end) throw new Error(`The demo has no finished order ${orderNumber}.`)
  const state = stateOf(order.entries, shop.shop.id, order.orderId)
  const content = composeReportContent(state, contextOf(shop, order, order.end.sealedAt))
  const identity = await createSigningIdentity({
    commonName: `${shop.shop.name} (sample)`,
    notBefore: order.end.sealedAt,
    days: 3_650,
  })
  const sealed = await sealReport(await drawReport(content), {
    certificate: identity.certificatePem,
    privateKey: identity.privateKeyPem,
    reason: `Report ${content.reportNumber} of order ${content.orderNumber}`,
    signedAt: order.end.sealedAt,
  })
  await writeFile(path, sealed)
}

const contextOf = (shop: DemoShop, order: DemoShop['orders'][number], composedAt: string): ReportContext => {
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
    templateVersion: 1,
    supersedes: null,
    shop: { name: shop.shop.name, lines: head.lines, telephone: head.telephone },
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
    photosReceived: new Set(),
  }
}

const [path, orderNumber = 'T-2601', ...more] = process.argv.slice(2)
if (!path || more.length > 0) {
  console.error(`Name one file to write the sealed report to; ${usage}`)
  process.exitCode = 2
} else {
  try {
    await writeSample(path, orderNumber)
  } catch (error) {
    console.error(
      `The sample report was not written to ${path}: ${error instanceof Error ? error.message : error}`,
    )
    process.exitCode = 1
  }
}
