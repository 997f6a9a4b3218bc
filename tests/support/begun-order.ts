import type { TestApp } from './app.ts'
import { freshCopy } from './fresh-copy.ts'
import { type Replay, replayOn } from './replay-order.ts'
import { type WriteEntry, writerOn } from './write-entry.ts'

export type BegunOrder = {
  readonly orderId: string
  readonly as: Replay['as']
  readonly write: WriteEntry
}

/** An order of the demo day, as far as the demo brings it, under ids of its own, to go on with over HTTP. */
export const begunOrder = async (shop: TestApp, number: string): Promise<BegunOrder> => {
  const { as, sendUntil } = await replayOn(shop)
  const { orderId, lines } = freshCopy(shop.demo, number)
  await sendUntil(lines)
  return { orderId, as, write: writerOn(shop, orderId) }
}
