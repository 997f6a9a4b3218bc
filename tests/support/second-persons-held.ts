import type { Entry } from '@bayledger/ledger/entry'
import { listEntriesAfter } from '../../apps/api/src/features/entries/store/read-ledger.ts'
import { faultOfSecondPersons } from '../../apps/api/src/proof/fault-of-second-persons.ts'
import type { TestApp } from './app.ts'

/** What verifying says of an order's second persons, once its entries were altered by hand. */
export const faultOfAltered = async (
  { deps, demo }: TestApp,
  orderId: string,
  alter: (entry: Entry) => Entry,
) => {
  const entries = await listEntriesAfter(deps.pool, demo.shop.id, orderId, 0)
  return faultOfSecondPersons(deps.pool, demo.shop.id, entries.map(alter))
}
