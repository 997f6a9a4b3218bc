import { type DemoLine, type OrderPen, orderPen } from '../../prisma/seeds/demo/order-pen.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { appendLine } from './append-line.ts'
import { freshLines } from './fresh-copy.ts'
import { openOrderWriter } from './order-in-flight.ts'

/**
 * Writes an order that is not of the demo day into the demo's shop, as another process would, up to the first entry that `stop`
 * names, or whole; it gets the next number. Gives its id.
 */
export const writeOwnOrder = async (
  serviceUrl: string,
  write: (pen: OrderPen) => void,
  stop: (line: DemoLine) => boolean = () => false,
): Promise<string> => {
  const writer = await openOrderWriter(serviceUrl)
  try {
    const demo = demoShop(new Date().toISOString())
    const pen = orderPen('own', demo.calendar, demo.instruments)
    write(pen)
    const { orderId, lines } = freshLines({ orderId: pen.orderId, lines: pen.lines() })
    const stopsAt = lines.findIndex(stop)
    for (const line of stopsAt < 0 ? lines : lines.slice(0, stopsAt))
      await appendLine(writer.parts, demo.shop.id, line)
    return orderId
  } finally {
    await writer.close()
  }
}
