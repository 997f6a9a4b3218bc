import { setTimeout as pause } from 'node:timers/promises'
import { withClient } from '@bayledger/db/with-client'
import type { FaultKind } from '../fault-kind.ts'
import { untilReady } from '../ready.ts'
import { startShop } from '../running-shop.ts'
import { addressesOf } from '../shop-folder.ts'

/** Somebody holds a lock that every append needs, until all connections of the pool wait for it and the next requests for them. */
export const poolExhausted: FaultKind = {
  name: 'pool exhausted',
  rounds: 20,
  open: async (from) => {
    const shop = await startShop(from)
    return {
      ...shop,
      round: async (random) => {
        let seconds = 0
        await shop.load.while(async () => {
          const at = addressesOf(shop.dataFolder)
          if (at === null) throw new Error('PostgreSQL does not run')
          await shop.load.hasWritten(random.between(10, 60))
          await withClient(at.superuser, async (client) => {
            await client.query('begin; lock table order_heads in access exclusive mode')
            // More readers than the pool has connections, each of which waits for the lock.
            const readers = Array.from({ length: 30 }, () =>
              fetch(`http://localhost:${shop.service.port}/readyz`)
                .then((reply) => reply.arrayBuffer())
                .catch(() => undefined),
            )
            await pause(random.oneOf([1_000, 4_000, 17_000]))
            await client.query('rollback')
            await Promise.all(readers)
          })
          seconds = await untilReady(shop.service.port)
        })
        return seconds
      },
    }
  },
}
