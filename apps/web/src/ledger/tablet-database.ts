import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Parcel, RefusalText } from './parcel.ts'

type Tablet = DBSchema & {
  /** What was written here and the server has not taken. */
  parcels: {
    key: number
    value: { number?: number; parcel: Parcel; refused: RefusalText | null }
  }
  /** Forms that are half filled in. */
  forms: { key: string; value: unknown }
}

const name = 'bayledger.bay'

let opened: Promise<IDBPDatabase<Tablet>> | null = null

/** The tablet's own database, opened when it is first used. */
export const tabletDatabase = (): Promise<IDBPDatabase<Tablet>> => {
  opened ??= openDB<Tablet>(name, 1, {
    upgrade: (database) => {
      database.createObjectStore('parcels', { keyPath: 'number', autoIncrement: true })
      database.createObjectStore('forms')
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
