import { tabletDatabase } from './tablet-database.ts'

/** Where a tablet keeps its keys, by name. A key is kept as the browser's own object and cannot be read out. */
export type KeyStore = {
  readonly get: (name: string) => Promise<unknown>
  /** Several in one reading, in the order of the names. */
  readonly getAll: (names: readonly string[]) => Promise<readonly unknown[]>
  readonly put: (name: string, value: unknown) => Promise<void>
  readonly drop: (name: string) => Promise<void>
  readonly names: () => Promise<readonly string[]>
}

const change = async (does: 'put' | 'delete', name: string, value?: unknown): Promise<void> => {
  // A key that a power cut took would make a tablet of what nobody enrolled.
  const changing = (await tabletDatabase()).transaction('keys', 'readwrite', { durability: 'strict' })
  await (does === 'put' ? changing.store.put(value, name) : changing.store.delete(name))
  await changing.done
}

/** Keys in IndexedDB. */
export const indexedDbKeys: KeyStore = {
  get: async (name) => (await tabletDatabase()).get('keys', name),
  getAll: async (names) => {
    const { store } = (await tabletDatabase()).transaction('keys')
    return Promise.all(names.map((name) => store.get(name)))
  },
  put: (name, value) => change('put', name, value),
  drop: (name) => change('delete', name),
  names: async () => (await tabletDatabase()).getAllKeys('keys'),
}

/** Browsers have their cryptography only on this machine's own address and over HTTPS. */
export const canMakeKeys = (): boolean => globalThis.crypto?.subtle !== undefined
