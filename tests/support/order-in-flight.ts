import { randomUUID } from 'node:crypto'
import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { forShop } from '../../apps/api/src/deps.ts'
import { appendDraft } from '../../apps/api/src/features/entries/service/append-draft.ts'
import { startLiveHub } from '../../apps/api/src/http/live.ts'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { freshCopy } from './fresh-copy.ts'

/**
 * Writes a demo order once more, up to the first entry that `stop` names, on the database of a running service, as another
 * process of the shop would; gives the new order's id. It gets the next number and another vehicle: one of the demo that
 * was never here before, by its plate.
 */
export const writeOrderInFlight = async (
  serviceUrl: string,
  { number, plate }: { readonly number: string; readonly plate: string },
  stop: (line: DemoLine) => boolean,
): Promise<string> => {
  const pool = openPool({ url: serviceUrl, size: 2, onIdleError: () => undefined })
  const live = await startLiveHub(serviceUrl, () => undefined)
  try {
    const demo = demoShop(new Date().toISOString())
    const { orderId, lines } = freshCopy(demo, number)
    const vehicle = demo.vehicles.find((one) => one.plate === plate)
    if (!vehicle) throw new Error(`no vehicle ${plate} in the demo`)
    const { id: vehicleId, customerId } = vehicle
    const signing = await createSigningIdentity({
      commonName: randomUUID(),
      notBefore: new Date().toISOString(),
      days: 1,
    })
    for (const { draft: line, sides, given, receivedAt } of lines.slice(0, lines.findIndex(stop))) {
      const draft =
        line.kind === 'order.opened' ? { ...line, payload: { ...line.payload, vehicleId, customerId } } : line
      const { orderNumber: _, ...rest } = given
      const named = new Map(sidesNamedIn(draft).map(({ side, digest }) => [digest, side]))
      const parts = {
        pool,
        prisma: openClient(pool),
        clock: { now: () => new Date(receivedAt) },
        tls: false,
        publicAddress: 'http://localhost',
        signingOf: async () => signing,
        live,
      }
      const written = await appendDraft(forShop(parts, demo.shop.id), draft, {
        sides: sides.map(({ digest, salt, text }) => ({
          side: named.get(digest) ?? 'personal',
          digest,
          salt: Buffer.from(salt, 'base64'),
          text,
        })),
        given: rest,
        plansAfterDecision: false,
      })
      if (!written.admitted) throw new Error(`${draft.kind} is refused: ${JSON.stringify(written)}`)
    }
    return orderId
  } finally {
    await live.close()
    await pool.end()
  }
}
