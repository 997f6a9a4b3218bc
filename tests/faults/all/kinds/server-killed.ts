import { setTimeout as pause } from 'node:timers/promises'
import type { FaultKind } from '../fault-kind.ts'
import { untilReady } from '../ready.ts'
import { startShop } from '../running-shop.ts'

/** The service is killed while it writes, and started again; its PostgreSQL stays behind and is taken over. */
export const serverKilled: FaultKind = {
  name: 'server killed',
  rounds: 100,
  open: async (from) => {
    const shop = await startShop(from)
    return {
      ...shop,
      round: async (random) => {
        let seconds = 0
        await shop.load.while(async () => {
          await shop.load.hasWritten(random.between(10, 120))
          await shop.service.kill()
          await pause(random.between(0, 500))
          const begun = performance.now()
          await shop.service.start()
          await untilReady(shop.service.port)
          seconds = (performance.now() - begun) / 1000
          await shop.load.hasWritten(10)
        })
        return seconds
      },
    }
  },
}
