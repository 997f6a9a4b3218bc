import { setTimeout as pause } from 'node:timers/promises'
import type { FaultKind } from '../fault-kind.ts'
import { untilReady } from '../ready.ts'
import { startShop } from '../running-shop.ts'
import { addressesOf } from '../shop-folder.ts'
import { childrenOf } from './postgres-killed.ts'

/** Every process of PostgreSQL halts for a while, at most longer than a connection is waited for, and goes on. */
export const slowDatabase: FaultKind = {
  name: 'slow database',
  rounds: 20,
  open: async (from) => {
    const shop = await startShop(from)
    return {
      ...shop,
      round: async (random) => {
        let seconds = 0
        await shop.load.while(async () => {
          await shop.load.hasWritten(random.between(10, 80))
          const first = addressesOf(shop.dataFolder)?.pid
          if (first === undefined) throw new Error('PostgreSQL does not run')
          const all = [first, ...childrenOf(first)]
          for (const pid of all) process.kill(pid, 'SIGSTOP')
          try {
            await pause(random.oneOf([500, 3_000, 12_000]))
          } finally {
            for (const pid of all) process.kill(pid, 'SIGCONT')
          }
          seconds = await untilReady(shop.service.port)
        })
        return seconds
      },
    }
  },
}
