import type { AddressInfo } from 'node:net'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import type { FuzzTarget } from './callers.ts'

/** Orders of the demo day at which the shop is when it is called: one before its estimate, one that waits for an answer. */
const orders = ['T-2602', 'T-2603'] as const

/** A shop with open orders whose service listens on this machine. */
export const startFuzzShop = async (): Promise<{ readonly shop: TestApp; readonly target: FuzzTarget }> => {
  const shop = await startTestApp()
  const replay = await replayOn(shop)
  const [first, second] = orders.map((number) => freshCopy(shop.demo, number))
  if (!first || !second) throw new Error('the demo has no such orders')
  for (const order of [first, second]) await replay.sendUntil(order.lines)
  await new Promise<void>((resolve) => {
    shop.server.listen(0, '127.0.0.1', resolve)
  })
  const { port } = shop.server.address() as AddressInfo
  return {
    shop,
    target: {
      address: `http://localhost:${port}`,
      ownerUrl: shop.ownerUrl,
      shopId: shop.demo.shop.id,
      orderId: first.orderId,
      locationId: shop.demo.home.id,
      now: () => shop.clock.now().getTime(),
    },
  }
}
