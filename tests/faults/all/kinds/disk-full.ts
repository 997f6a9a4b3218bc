import { closeSync, openSync, rmSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import type { FaultKind } from '../fault-kind.ts'
import { makeLoopDisk } from '../loop-disk.ts'
import { untilNotReady, untilReady } from '../ready.ts'
import { startShop } from '../running-shop.ts'

const diskMegabytes = 600

/** The disk of the shop fills up while people write, and room is made again without a restart. */
export const diskFull: FaultKind = {
  name: 'disk full',
  rounds: 20,
  open: async (from) => {
    const disk = makeLoopDisk(diskMegabytes)
    const shop = await startShop(from, { place: disk.path })
    return {
      ...shop,
      round: async (random) => {
        let seconds = 0
        await shop.load.while(async () => {
          await shop.load.hasWritten(random.between(10, 80))
          const filler = join(disk.path, 'filler')
          fill(filler)
          await untilNotReady(shop.service.port)
          await pause(random.between(200, 1_500))
          rmSync(filler)
          seconds = await untilReady(shop.service.port)
          await shop.load.hasWritten(10)
        })
        return seconds
      },
      close: async () => {
        await shop.close()
        disk.remove()
      },
    }
  },
}

/** Writes until there is no room, in ever smaller pieces. */
const fill = (path: string): void => {
  const file = openSync(path, 'w')
  for (let size = 1 << 22; size >= 1; size >>= 1)
    try {
      for (;;) writeSync(file, Buffer.alloc(size))
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'ENOSPC')) throw error
    }
  closeSync(file)
}
