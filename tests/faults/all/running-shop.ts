import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type ServiceProcess, serviceProcess } from '../support/service-process.ts'
import type { Stage } from './fault-kind.ts'
import { judgeEntries } from './judge.ts'
import { type Load, openLoad } from './load.ts'
import { addressesOf, copyShopFolder, removeFolder, type ShopFolder } from './shop-folder.ts'

/** A service with its own PostgreSQL on a copy of a shop's folder, and people who work at it. */
export type RunningShop = {
  readonly dataFolder: string
  readonly service: ServiceProcess
  readonly load: Load
} & Omit<Stage, 'round'>

/** `place` is where the folder is copied to: a folder of its own, if not given. */
export const startShop = async (
  from: ShopFolder,
  { environment = {}, place }: { readonly environment?: NodeJS.ProcessEnv; readonly place?: string } = {},
): Promise<RunningShop> => {
  const home = place ?? mkdtempSync(join(tmpdir(), 'bayledger-faults-shop-'))
  const dataFolder = copyShopFolder(from, join(home, 'data'))
  const service = await serviceProcess({ DATA_FOLDER: dataFolder, ...environment })
  await service.start()
  const load = openLoad([service.port], from.orders)
  return {
    ...{ dataFolder, service, load },
    judge: () => {
      const at = addressesOf(dataFolder)
      if (at === null) throw new Error('PostgreSQL does not run, so nothing can be judged')
      return judgeEntries(at.service, dataFolder, load)
    },
    close: async () => {
      await service.stop()
      if (place === undefined) removeFolder(home)
    },
  }
}
