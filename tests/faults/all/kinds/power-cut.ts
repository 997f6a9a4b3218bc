import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { serviceProcess } from '../../support/service-process.ts'
import type { FaultKind } from '../fault-kind.ts'
import { type Judged, judgeEntries, nothingJudged, sumOf } from '../judge.ts'
import { openLoad } from '../load.ts'
import { makeLoopDisk } from '../loop-disk.ts'
import { addressesOf, copyShopFolder, type ShopFolder } from '../shop-folder.ts'
import { childrenOf } from './postgres-killed.ts'

const diskMegabytes = 600

/**
 * The power is cut while people write: everything halts, and what the disk holds at that instant is opened again on another
 * machine. What PostgreSQL had not flushed is not in the file behind the disk, as it would not be on a disk.
 */
export const powerCut: FaultKind = {
  name: 'power cut',
  rounds: 20,
  open: async (from) => {
    let all: Judged = nothingJudged
    return {
      round: async (random) => {
        const { judged, seconds } = await cutPower(from, random.between(20, 200), {})
        all = sumOf(all, judged)
        return seconds
      },
      judge: async () => all,
      close: async () => undefined,
    }
  },
}

/** Cuts the power after so many acknowledged entries; `settings` are PostgreSQL's. */
export const cutPower = async (
  from: ShopFolder,
  after: number,
  settings: Readonly<Record<string, string>>,
): Promise<{ readonly judged: Judged; readonly seconds: number }> => {
  const disk = makeLoopDisk(diskMegabytes)
  const dataFolder = copyShopFolder(from, join(disk.path, 'data'))
  execFileSync('sync', ['-f', disk.path])
  const postgres = await startEmbeddedPostgres({ dataFolder, progress: () => undefined, settings })
  const service = await serviceProcess({
    DATABASE_URL: postgres.serviceUrl,
    DATABASE_OWNER_URL: postgres.ownerUrl,
    DATA_FOLDER: dataFolder,
  })
  await service.start()
  const load = openLoad([service.port], from.orders)
  let acknowledged: ReadonlySet<string> = new Set()
  let left = disk
  await load.while(async () => {
    await load.hasWritten(after)
    const first = addressesOf(dataFolder)?.pid ?? 0
    const all = [first, ...childrenOf(first)]
    for (const pid of all) process.kill(pid, 'SIGSTOP')
    // Whatever is acknowledged from here on is not judged: nothing can be, for PostgreSQL is halted.
    acknowledged = new Set(load.acknowledged)
    left = disk.afterPowerCut()
    for (const pid of all) process.kill(pid, 'SIGCONT')
  })
  await service.stop()
  await postgres.stop()
  disk.remove()

  const begun = performance.now()
  const found = join(left.path, 'data')
  const again = await startEmbeddedPostgres({ dataFolder: found, progress: () => undefined }).catch(
    () => null,
  )
  const seconds = (performance.now() - begun) / 1000
  try {
    const judged = again
      ? await judgeEntries(again.serviceUrl, found, { acknowledged, wrong: load.wrong })
      : {
          ...nothingJudged,
          acknowledged: acknowledged.size,
          lost: acknowledged.size,
          lines: ['PostgreSQL does not start on what the power cut left'],
        }
    return { judged, seconds }
  } finally {
    await again?.stop()
    left.remove()
  }
}
