import { execFileSync } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'
import type { FaultKind } from '../fault-kind.ts'
import { untilReady } from '../ready.ts'
import { startShop } from '../running-shop.ts'
import { addressesOf } from '../shop-folder.ts'

/** PostgreSQL is killed under the service: all of it, its first process, or one that serves a connection. */
export const postgresKilled: FaultKind = {
  name: 'PostgreSQL killed',
  rounds: 50,
  open: async (from) => {
    const shop = await startShop(from)
    return {
      ...shop,
      round: async (random) => {
        let seconds = 0
        await shop.load.while(async () => {
          await shop.load.hasWritten(random.between(10, 120))
          const first = addressesOf(shop.dataFolder)?.pid
          if (first === undefined) throw new Error('PostgreSQL does not run')
          const others = childrenOf(first)
          const victims = random.oneOf([[first, ...others], [first], [random.oneOf(others)]])
          for (const pid of victims) killIfThere(pid)
          // What was under way is answered before it is asked whether the service is ready.
          await pause(50)
          seconds = await untilReady(shop.service.port)
          await shop.load.hasWritten(10)
        })
        return seconds
      },
    }
  },
}

export const childrenOf = (pid: number): number[] =>
  execFileSync('ps', ['-o', 'pid=', '--ppid', String(pid)], { encoding: 'utf8' })
    .split('\n')
    .map(Number)
    .filter((child) => child > 0)

const killIfThere = (pid: number): void => {
  try {
    process.kill(pid, 'SIGKILL')
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ESRCH')) throw error
  }
}
