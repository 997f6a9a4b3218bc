import { bringUpToDate, openShopDatabase } from '@bayledger/db/shop-database'
import { readConfig } from '../config.ts'
import { rebuildAfterUpgrade } from '../rebuild-after-upgrade.ts'

/**
 * `npm run db:migrate`: applies what is pending as the owner and gives the service's role its rights. For shops that
 * keep the owner's address away from the service; `npm start` does the same by itself where it knows that address.
 */
const database = await openShopDatabase(readConfig(), (line) => console.log(line), 'join')
try {
  await rebuildAfterUpgrade(database.ownerUrl, await bringUpToDate(database))
  console.log('The database is up to date, and the service may do what it needs and no more.')
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error))
  process.exitCode = 1
} finally {
  await database.stop()
}
