import { canonicalText } from '@bayledger/ledger/digests'
import type { Entry } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import type { OrderState } from '@bayledger/ledger/state'
import type { Pool } from 'pg'
import { projectHead } from '../features/entries/store/projections/head.ts'
import type { OrderWrite } from '../features/entries/store/projections/projection.ts'
import { seenSensorRows } from '../features/entries/store/projections/seen-sensors.ts'
import { stockMovementRows } from '../features/entries/store/projections/stock-movements.ts'
import { wrenchCycleRows } from '../features/entries/store/projections/wrench-cycles.ts'
import type { Fault } from './finding.ts'
import {
  listCountedRows,
  listStockedParts,
  listStrayCounts,
  listWrongStock,
  type StoredHead,
} from './read-proof.ts'

type ProjectedOrder = {
  readonly pool: Pool
  readonly shopId: string
  readonly orderId: string
  readonly number: string
  readonly entries: readonly Entry[]
}

/**
 * The first projection of an order that is not what its entries make: the row of the floor list, the sensors seen, the
 * clicks of wrenches, the parts drawn from stock. `null`: all are.
 */
export const faultOfProjections = async (order: ProjectedOrder, head: StoredHead): Promise<Fault | null> => {
  const { shopId, orderId, number, entries } = order
  const [first] = entries
  const last = entries.at(-1)
  if (!first || !last) return null
  const where = `Order ${number}`
  const state = folded(entries)
  if (!state) return { where, what: 'its entries make no order that this program can read' }
  const made = projectHead(state, last.receivedAt)
  const shown = {
    ...made,
    number: first.given.orderNumber ?? number,
    openedAt: first.receivedAt,
  }
  const stored: Readonly<Record<string, unknown>> = {
    ...head,
    promisedAt: head.promisedAt?.toISOString() ?? null,
    openedAt: head.openedAt.toISOString(),
  }
  const differs = Object.entries(shown).find(
    ([field, value]) => canonicalText(value) !== canonicalText(stored[field] ?? null),
  )
  if (differs)
    return {
      where,
      what: `the floor list shows another ${differs[0]} than its entries make; npm run projections:rebuild`,
    }
  const write = {
    shopId,
    orderId,
    after: 0,
    entries,
    head: made,
    entryById: (id: string) => entries.find((entry) => entry.id === id),
    sides: [],
    messages: [],
  }
  return faultOfCounts(order, write)
}

/**
 * A part that the shop did not stock at any place where the order was has no movement. About the moment at which it was
 * listed both are right.
 */
const faultOfCounts = async (
  { pool, shopId, orderId, number, entries }: ProjectedOrder,
  write: OrderWrite,
): Promise<Fault | null> => {
  const moved = stockMovementRows.rowsOf(write)
  const stocked = await listStockedParts(
    pool,
    shopId,
    moved.map(({ part_number }) => String(part_number)),
    placesOf(entries),
  )
  const movements = moved.flatMap(({ entry_id, quantity, part_number }) => {
    const since = stocked.get(String(part_number))
    if (since === undefined) return []
    const received = entries.find(({ id }) => id === entry_id)?.receivedAt ?? ''
    const line = `part ${entry_id} ${quantity} ${Number(quantity) < 0 ? 'drawn' : 'withdrawn'} ${part_number}`
    return [{ line, isDue: Date.parse(received) > since.getTime() + listingMs }]
  })
  const stored = await listCountedRows(pool, shopId, orderId)
  const made = [
    ...seenSensorRows
      .rowsOf(write)
      .map((row) => `sensor ${row.entry_id} ${row.vehicle_id} ${row.wheel} ${row.sensor_id} ${row.how}`),
    ...wrenchCycleRows
      .rowsOf(write)
      .map((row) => `clicks ${row.entry_id} ${row.instrument_id} ${row.clicks}`),
    ...movements.filter(({ line, isDue }) => isDue || stored.includes(line)).map(({ line }) => line),
  ]
  const line = made.find((one) => !stored.includes(one)) ?? stored.find((one) => !made.includes(one))
  if (line === undefined && made.length === stored.length) return null
  const [counted = '', entryId] = (line ?? stored[0] ?? '').split(' ')
  const entry = entries.find(({ id }) => id === entryId)
  return {
    where: `Order ${number}${entry ? `, entry ${entry.seq} (${entry.kind})` : ''}`,
    what: `${countedWords[counted as Counted]} differ from what its entries make`,
  }
}

/** How long a part may be on its way onto the list while a tablet draws it. */
const listingMs = 60_000

/** Lines of the stock list that say another number on hand than their movements make. */
export const faultsOfStock = async (pool: Pool, shopId: string): Promise<Fault[]> =>
  (await listWrongStock(pool, shopId)).map(({ partNumber, place, onHand, moved }) => ({
    where: `Part ${partNumber} at ${place}`,
    what: `the list says ${onHand} on hand and its movements make ${moved}; npm run projections:rebuild`,
  }))

/** Clicks and movements of stock that name an entry which is not there. */
export const faultsOfStrayCounts = async (pool: Pool, shopId: string): Promise<Fault[]> =>
  (await listStrayCounts(pool, shopId)).map(({ counted, entryId }) => ({
    where: `Entry ${entryId}`,
    what: `${countedWords[counted]} name it, and there is no such entry`,
  }))

type Counted = 'sensor' | 'clicks' | 'part'

const countedWords: Readonly<Record<Counted, string>> = {
  sensor: 'the sensors seen',
  clicks: 'the clicks of a wrench',
  part: 'the movements of stock',
}

const placesOf = (entries: readonly Entry[]): string[] =>
  entries.flatMap((entry) =>
    entry.kind === 'order.opened' || entry.kind === 'order.moved' ? [entry.payload.locationId] : [],
  )

/** `null` where entries that were forged with hashes that hold say what no writer could have written. */
const folded = (entries: readonly Entry[]): OrderState | null => {
  try {
    const state = fold(entries)
    return state.opened ? state : null
  } catch {
    return null
  }
}
