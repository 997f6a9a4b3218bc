import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import type { FaultKind } from '../fault-kind.ts'
import { startShop } from '../running-shop.ts'
import { removeFolder } from '../shop-folder.ts'

const minute = 60_000
const hour = 60 * minute

/** The clock of the service's machine is set forward and back while it writes, by seconds and by more than a day. */
export const clockJumps: FaultKind = {
  name: 'clock jumps',
  rounds: 20,
  open: async (from) => {
    const folder = mkdtempSync(join(tmpdir(), 'bayledger-faults-clock-'))
    const offset = join(folder, 'offset')
    writeFileSync(offset, '0')
    const preload = join(import.meta.dirname, '../shifted-clock.mjs')
    const shop = await startShop(from, {
      environment: { NODE_OPTIONS: `--import=${preload}`, CLOCK_OFFSET_FILE: offset },
    })
    return {
      ...shop,
      round: async (random) => {
        await shop.load.while(async () => {
          await shop.load.hasWritten(random.between(5, 30))
          const jump = random.oneOf([2_000, 5 * minute, hour, 25 * hour])
          writeFileSync(offset, String(random.chance(0.5) ? jump : -jump))
          // The process looks at the file ten times a second.
          await pause(500)
          await shop.load.hasWritten(random.between(5, 40))
          writeFileSync(offset, '0')
          await pause(500)
          await shop.load.hasWritten(5)
        })
        return null
      },
      close: async () => {
        await shop.close()
        removeFolder(folder)
      },
    }
  },
}
