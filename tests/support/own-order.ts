import { type OrderPen, orderPen } from '../../prisma/seeds/demo/order-pen.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { appendLine } from './append-line.ts'
import { freshLines } from './fresh-copy.ts'
import { openOrderWriter } from './order-in-flight.ts'

/** Writes an order that is not of the demo day into the demo's shop, as another process would; it gets the next number. */
export const writeOwnOrder = async (serviceUrl: string, write: (pen: OrderPen) => void): Promise<void> => {
  const writer = await openOrderWriter(serviceUrl)
  try {
    const demo = demoShop(new Date().toISOString())
    const pen = orderPen('own', demo.calendar, demo.instruments)
    write(pen)
    const { lines } = freshLines({ orderId: pen.orderId, lines: pen.lines() })
    for (const line of lines) await appendLine(writer.parts, demo.shop.id, line)
  } finally {
    await writer.close()
  }
}
