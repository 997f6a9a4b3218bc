import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { openShopDatabase, type ShopDatabase } from '@bayledger/db/shop-database'
import { type Config, ConfigProblem, readConfig } from '../config.ts'
import { failureWords } from '../failure-words.ts'

/**
 * Does a command's work on the shop's database, also while the service runs, and ends with status 2 and words where that
 * fails. `whereNone`: a command for a shop never makes a database, which a wrong DATA_FOLDER would look like; the one that
 * makes the shop does. `say` gets what takes long.
 */
export const onShop = async (
  work: (parts: { readonly database: ShopDatabase; readonly config: Config }) => Promise<void>,
  {
    whereNone = 'refuse',
    say = (line: string) => console.log(line),
  }: { readonly whereNone?: 'refuse' | 'make'; readonly say?: (line: string) => void } = {},
): Promise<void> => {
  try {
    const config = readConfig()
    if (whereNone === 'refuse') refuseNone(config)
    const database = await openShopDatabase(config, say, 'join')
    try {
      await work({ database, config })
    } finally {
      await database.stop()
    }
  } catch (error) {
    console.error(failureWords(error))
    process.exitCode = 2
  }
}

const refuseNone = ({ databaseUrl, dataFolder }: Config): void => {
  if (databaseUrl !== null || existsSync(join(dataFolder, 'postgres'))) return
  throw new ConfigProblem(
    `There is no shop in ${dataFolder}. Set DATA_FOLDER to the folder of the service, or DATABASE_URL. Nothing was changed.`,
  )
}
