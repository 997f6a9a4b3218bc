import { FloorRow, getOrder } from '@bayledger/contract/orders'
import { getSettings, listInstruments, listStock } from '@bayledger/contract/settings'
import { listStaff } from '@bayledger/contract/staff'
import { kindNames, versionOf } from '@bayledger/ledger/registry'
import type { QueryClient } from '@tanstack/react-query'
import * as z from 'zod/mini'
import { indexedDbReads } from '../../../ledger/indexed-db-reads.ts'
import { keepReads } from '../../../ledger/reads.ts'
import { deviceQuery } from '../session/device-query.ts'
import { keptDevice } from '../session/tablet-contact.ts'

/**
 * What the bay must know to open without its server, beside the tablet itself (`session/tablet-contact.ts`). Who is signed in
 * is not among it: whoever starts a tablet anew says who they are.
 */
const schemas: Readonly<Record<string, z.ZodMiniType>> = {
  staff: listStaff.replies[200],
  settings: getSettings.replies[200],
  instruments: listInstruments.replies[200],
  stock: listStock.replies[200],
  floor: z.strictObject({ asOf: z.string(), rows: z.array(FloorRow) }),
  orders: getOrder.replies[200],
}

/** An order's own reply has two parts in its key; what the server computes from it has more. */
const schemaOf = (key: readonly unknown[]): z.ZodMiniType | null =>
  key.length === (key[0] === 'orders' ? 2 : 1) ? (schemas[String(key[0])] ?? null) : null

const bayReads = keepReads(
  indexedDbReads,
  schemaOf,
  kindNames.map((kind) => `${kind} ${versionOf(kind)}`).join(', '),
)

/**
 * Fills the client with what this tablet keeps: which tablet it is, and the server's replies, which are read again as soon
 * as they are shown. From then on it keeps what the client reads and drops what the client forgets. A tablet whose storage
 * cannot be read starts with nothing.
 */
export const restoreReads = async (client: QueryClient): Promise<void> => {
  // One that is shut, or that nobody enrolled, is asked about when the door is shown.
  const device = await keptDevice().catch(() => null)
  if (device !== null) client.setQueryData(deviceQuery.queryKey, device)
  for (const { key, data, readAt } of await bayReads.load().catch(() => []))
    client.setQueryData(key, data, { updatedAt: readAt })
  // Whether an order has moved on is seen from the floor list; the rest is read again.
  await client.invalidateQueries({
    refetchType: 'none',
    predicate: ({ queryKey }) => queryKey[0] !== 'orders',
  })
  client.getQueryCache().subscribe((event) => {
    const { queryKey, state } = event.query
    if (event.type === 'removed') bayReads.drop(queryKey)
    else if (event.type === 'updated' && event.action.type === 'success')
      bayReads.keep({ key: queryKey, data: state.data, readAt: state.dataUpdatedAt })
  })
}
