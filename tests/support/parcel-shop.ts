import { randomUUID } from 'node:crypto'
import type { DraftEnvelope } from '@bayledger/ledger/entry'
import { startTestApp, type TestApp, type TestTablet } from './app.ts'
import { freshCopy } from './fresh-copy.ts'
import { envelopeOf, replayOn } from './replay-order.ts'

type Refused = { readonly id: string; readonly code: string; readonly words: string }

/** A shop with an order in the bay and a tablet, from which entries come home in parcels. */
export type ParcelShop = {
  readonly shop: TestApp
  readonly tablet: TestTablet
  readonly orderId: string
  /** What the lamp did at key-on, as a technician saw it: an entry that nobody has written yet. */
  readonly seen: () => DraftEnvelope
  /** The entries of the order, as the desk reads them. */
  readonly ledger: () => Promise<
    { readonly id: string; readonly writtenBy: object; readonly deviceId: string | null }[]
  >
  /** What lies in the desk's tray. */
  readonly tray: () => Promise<Refused[]>
}

/** Starts the shop, with the order as far as its last check. */
export const startParcelShop = async (): Promise<ParcelShop> => {
  const shop = await startTestApp()
  const replay = await replayOn(shop)
  const { orderId, lines } = freshCopy(shop.demo, 'T-2603')
  await replay.sendUntil(lines, ({ draft }) => draft.kind === 'wheel.checked')
  const read = async (path: string) => (await (await shop.desk('devin')).get(path).expect(200)).body
  return {
    shop,
    orderId,
    tablet: await shop.tablet(),
    seen: () => {
      const line = freshCopy(shop.demo, 'T-2603').lines.find(
        ({ draft }) => draft.kind === 'telltale.observed',
      )
      if (!line) throw new Error('nobody observes the warning light in this order')
      return { ...envelopeOf(line.draft), id: randomUUID(), orderId, restsOn: [] }
    },
    ledger: async () => (await read(`/api/orders/${orderId}`)).entries,
    tray: async () => (await read('/api/refused-entries')).refused,
  }
}
