import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { openShopDatabase } from '@bayledger/db/shop-database'
import { readConfig } from '../config.ts'
import { RotationProblem, rotateSigningKey } from '../signing/rotate-signing-key.ts'

/**
 * `npm run certificate -- rotate [<shop>]`: from now on the shop's reports are sealed with a new key, or with the one that
 * SIGNING_CERT and SIGNING_KEY name. Safe while the service runs.
 */
export const rotate = async (shopName: string | undefined): Promise<void> => {
  try {
    const config = readConfig()
    if (config.databaseUrl === null && !existsSync(join(config.dataFolder, 'postgres')))
      throw new RotationProblem(`There is no shop in ${config.dataFolder}. Set DATA_FOLDER or DATABASE_URL.`)
    const database = await openShopDatabase(config, (line) => console.error(line), 'join')
    const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
    try {
      const rotated = await rotateSigningKey({ ...config, pool, clock: { now: () => new Date() } }, shopName)
      console.log(
        `${rotated.shopName} seals with another key from now on. Its fingerprint is\n  ${rotated.fingerprint}\n${
          rotated.keptIn === null
            ? ''
            : `The key and certificate of before are in ${rotated.keptIn}. Back up ${rotated.folder}; once it is backed up, the old private key may be destroyed.\n`
        }Reports that were sealed before stay as they are and stay genuine at /check.`,
      )
    } finally {
      await pool.end()
      await database.stop()
    }
  } catch (error) {
    console.error(error instanceof RotationProblem || error instanceof Error ? error.message : String(error))
    process.exitCode = 1
  }
}
