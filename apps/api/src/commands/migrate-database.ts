import { bringUpToDate } from '@bayledger/db/shop-database'
import { rebuildAfterUpgrade } from '../rebuild-after-upgrade.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run db:migrate`: applies what is pending as the owner and gives the service's role its rights. For shops that
 * keep the owner's address away from the service; `npm start` does the same by itself where it knows that address.
 */
await onShop(async ({ database }) => {
  await rebuildAfterUpgrade(database.ownerUrl, await bringUpToDate(database))
  console.log('The database is up to date, and the service may do what it needs and no more.')
})
