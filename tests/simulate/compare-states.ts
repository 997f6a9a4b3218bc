import { fold } from '@bayledger/ledger/fold'
import { type KeptOrder, stateOfKept } from '../../apps/api/src/features/entries/service/kept-orders.ts'
import type { OrderReply } from '../../apps/web/src/ledger/order.ts'
import { shopId } from '../../packages/ledger/test-support/shop.ts'
import type { RecordWatch } from './record-watch.ts'
import type { Database } from './simulated-database.ts'
import type { ServerProcess } from './simulated-server.ts'

type Holder = { readonly name: string; readonly held: () => ReadonlyMap<string, OrderReply> }

/** One head of so many is folded afresh in the course of a day; at its end every one that anybody holds. */
const oneOf = 8

/**
 * Holds what servers keep and devices have heard against a fresh fold, as soon as it changes. Every device's newest hash is
 * held against the record; folding is done for one head of eight, unless `every` is asked for.
 */
export const compareStates = (record: RecordWatch, database: Database) => {
  const kept = new WeakMap<ServerProcess, Map<string, KeptOrder>>()
  const read = new WeakMap<Holder, Map<string, OrderReply>>()

  const compareServer = (server: ServerProcess, every: boolean) => {
    const known = kept.get(server) ?? new Map<string, KeptOrder>()
    kept.set(server, known)
    for (const orderId of database.orderIds().slice(-5)) {
      const order = server.memory.orders.peek(shopId, orderId)
      if (!order?.last || (known.get(orderId) === order && !every)) continue
      known.set(orderId, order)
      if (every || order.last.seq % oneOf === 0)
        record.compare(`server ${server.number}`, orderId, stateOfKept(order))
    }
  }

  const compareHolder = (holder: Holder, every: boolean) => {
    const known = read.get(holder) ?? new Map<string, OrderReply>()
    read.set(holder, known)
    for (const [orderId, reply] of holder.held()) {
      if (known.get(orderId) === reply && !every) continue
      known.set(orderId, reply)
      record.agree(holder.name, orderId, reply.head)
      if (every || reply.head.seq % oneOf === 0)
        record.compare(holder.name, orderId, fold(reply.entries as Parameters<typeof fold>[0]))
    }
  }

  return (servers: readonly ServerProcess[], holders: readonly Holder[], every = false): void => {
    for (const server of servers) compareServer(server, every)
    for (const holder of holders) compareHolder(holder, every)
  }
}
