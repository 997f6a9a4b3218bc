import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB, type StoreNames } from 'idb'
import type { Kept } from './kept.ts'

type Tablet = DBSchema & {
  /**
   * What was written here and the server has not taken: the parcel, why it was refused, and the parcel once more, sealed to
   * the server.
   */
  parcels: {
    key: number
    value: { number?: number; kept: Kept; refused: Kept | null; box: string | null }
  }
  /** Forms that are half filled in. */
  forms: { key: string; value: Kept }
  /** What the server's replies were, so that screens open without it. */
  reads: { key: string; value: Kept }
  /** Keys of this tablet that never leave it, and what it checks PINs with. */
  keys: { key: string; value: unknown }
  /** Pictures that the server has not received yet, by their digest. */
  pictures: { key: string; value: unknown }
}

const name = 'bayledger.bay'

let opened: Promise<IDBPDatabase<Tablet>> | null = null

/** The tablet's own database, opened when it is first used. */
export const tabletDatabase = (): Promise<IDBPDatabase<Tablet>> => {
  opened ??= openDB<Tablet>(name, 3, {
    upgrade: async (database, from, _to, changing) => {
      if (from < 1) {
        database.createObjectStore('parcels', { keyPath: 'number', autoIncrement: true })
        database.createObjectStore('forms')
      }
      if (from < 2)
        for (const store of ['reads', 'keys', 'pictures'] as const) database.createObjectStore(store)
      if (from === 1 || from === 2) await keepAsItWas(changing)
    },
    // A page that another program loads waits for this one to let go.
    blocking: (_, __, event) => {
      if (event.target instanceof IDBDatabase) event.target.close()
      opened = null
    },
    terminated: () => {
      opened = null
    },
  }).catch((problem: unknown) => {
    opened = null
    throw problem
  })
  return opened
}

/** Until version 2 rows lay on the tablet as they were written. What waits there is not sealed afterwards, and is sent. */
const keepAsItWas = async (
  changing: IDBPTransaction<Tablet, StoreNames<Tablet>[], 'versionchange'>,
): Promise<void> => {
  const plain = (value: unknown): Kept => ({ is: 'plain', value })
  for await (const cursor of changing.objectStore('parcels')) {
    const { number, parcel, refused } = cursor.value as {
      number?: number
      parcel?: unknown
      refused: unknown
    }
    await cursor.update({
      ...(number === undefined ? {} : { number }),
      kept: plain(parcel),
      refused: refused === null ? null : plain(refused),
      box: null,
    })
  }
  for await (const cursor of changing.objectStore('forms')) await cursor.update(plain(cursor.value))
}
