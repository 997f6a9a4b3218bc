import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { serviceProcess } from '../../support/service-process.ts'
import type { FaultKind } from '../fault-kind.ts'
import { judgeEntries } from '../judge.ts'
import { openLoad } from '../load.ts'
import { untilReady } from '../ready.ts'
import { copyShopFolder, removeFolder } from '../shop-folder.ts'

/** Two services on one outside database and one set of keys; one is killed, then the other, and people go to whichever answers. */
export const twoServers: FaultKind = {
  name: 'two servers',
  rounds: 30,
  open: async (from) => {
    const home = mkdtempSync(join(tmpdir(), 'bayledger-faults-shop-'))
    const dataFolder = copyShopFolder(from, join(home, 'data'))
    const postgres = await startEmbeddedPostgres({ dataFolder, progress: () => undefined })
    const environment = {
      DATABASE_URL: postgres.serviceUrl,
      DATABASE_OWNER_URL: postgres.ownerUrl,
      DATA_FOLDER: dataFolder,
    }
    const services = await Promise.all([serviceProcess(environment), serviceProcess(environment)])
    for (const service of services) await service.start()
    const load = openLoad(
      services.map(({ port }) => port),
      from.orders,
    )
    return {
      round: async (random) => {
        let slowest = 0
        await load.while(async () => {
          for (const service of services) {
            await load.hasWritten(random.between(10, 80))
            await service.kill()
            await pause(random.between(0, 300))
            const begun = performance.now()
            await service.start()
            await untilReady(service.port)
            slowest = Math.max(slowest, (performance.now() - begun) / 1000)
          }
        })
        return slowest
      },
      judge: () => judgeEntries(postgres.serviceUrl, dataFolder, load),
      close: async () => {
        for (const service of services) await service.stop()
        await postgres.stop()
        removeFolder(home)
      },
    }
  },
}
