import type { Parcel } from '../../apps/web/src/ledger/parcel.ts'
import type { HeadRowAsked } from './database-rows.ts'
import type { Plants } from './shop.ts'
import type { Database } from './simulated-database.ts'
import type { OutboxPlant, SyncPlant } from './simulated-tablet.ts'
import type { Fault } from './violation.ts'

/** A fault that somebody might make, put in from outside, and what the simulation has to say of it. */
export type PlantedFault = { readonly plants: Plants; readonly fault: Fault }

const firstIdOf = ({ entries }: Parcel): string => entries[0]?.id ?? ''

/** The outbox is told that a parcel is kept while it is still on its way to the disk. */
const sendsBeforeItIsDurable: OutboxPlant = (world, disk) => ({
  ...world,
  store: {
    ...world.store,
    keep: async (parcel) => {
      world.store.keep(parcel).catch(() => undefined)
      return disk.numberOf(firstIdOf(parcel)) ?? 0
    },
    statusOf: async () => 'waiting',
  },
})

/** What is sent once more is sent as something new. */
const retriesUnderNewId: OutboxPlant = (world) => {
  const sent = new WeakSet<Parcel>()
  return {
    ...world,
    send: (parcels, ...rest) =>
      world.send(
        parcels.map((parcel) => {
          const isRetry = sent.has(parcel)
          sent.add(parcel)
          const again = parcel.entries.map((entry) => ({ ...entry, id: entry.id.replace(/^0/, '1') }))
          return isRetry ? { ...parcel, entries: again } : parcel
        }),
        ...rest,
      ),
  }
}

/** A parcel leaves the tablet's disk when it is sent, not when the server has answered for it. */
const dropsBeforeTheAnswer: OutboxPlant = (world, disk) => ({
  ...world,
  send: (parcels, ...rest) => {
    void world.store.drop(parcels.flatMap((parcel) => disk.numberOf(firstIdOf(parcel)) ?? []))
    return world.send(parcels, ...rest)
  },
})

/** A tablet takes itself for the only one that holds an order, whatever it has heard. */
const takesItselfForTheOnlyOne: SyncPlant = (sync) => ({
  ...sync,
  held: (orderId) => {
    const reply = sync.held(orderId)
    return reply && { ...reply, heldAlone: true }
  },
})

/** Entries are written after whatever the newest one is, not only after the one that they were admitted against. */
const leavesOutTheHeadGuard = (database: Database): Database => ({
  ...database,
  run: ({ name, values }) => {
    if (!name.startsWith('append ')) return database.run({ name, values })
    const heads = JSON.parse(values[0] as string) as HeadRowAsked[]
    const ahead = new Map(
      heads.map((head) => [head.order_id, (database.headOf(head.order_id)?.seq ?? 0) - head.after]),
    )
    const moved = heads.map((head) => {
      const newest = database.headOf(head.order_id)
      return newest
        ? {
            ...head,
            after: newest.seq,
            after_hash: newest.hash,
            seq: head.seq + (ahead.get(head.order_id) ?? 0),
          }
        : head
    })
    const rows = JSON.parse(values[1] as string) as { order_id: string; seq: number }[]
    const shifted = rows.map((row) => ({ ...row, seq: row.seq + (ahead.get(row.order_id) ?? 0) }))
    return database.run({
      name,
      values: [JSON.stringify(moved), JSON.stringify(shifted), ...values.slice(2)],
    })
  },
})

export const plantedFaults: Readonly<Record<string, PlantedFault>> = {
  'an outbox that sends before it is durable': { plants: { outbox: sendsBeforeItIsDurable }, fault: 'lost' },
  'an outbox that retries under a new id': { plants: { outbox: retriesUnderNewId }, fault: 'twice' },
  'an outbox that drops before the answer': { plants: { outbox: dropsBeforeTheAnswer }, fault: 'lost' },
  'a server that leaves out the guard of the head': {
    plants: { database: leavesOutTheHeadGuard },
    fault: 'diverged',
  },
  'a server that answers before the database has': {
    plants: {
      answerEarly: ({ name, values }) =>
        name.startsWith('append ') ? (JSON.parse(values[0] as string) as HeadRowAsked[]) : null,
    },
    fault: 'lost',
  },
  'a tablet that opens the road though another one holds the order': {
    plants: { sync: takesItselfForTheOnlyOne },
    fault: 'gates',
  },
}
