import type { ReadStore } from './reads.ts'
import { tabletDatabase } from './tablet-database.ts'
import { tabletVault } from './vault.ts'
import { whenIdle } from './when-idle.ts'

/** Replies of the server in IndexedDB, sealed, without `strict`: what a power cut takes is read again. */
export const indexedDbReads: ReadStore = {
  load: async () => {
    const reading = (await tabletDatabase()).transaction('reads')
    const [names, kept] = await Promise.all([reading.store.getAllKeys(), reading.store.getAll()])
    // What was sealed under a key that was dropped is nothing.
    const values = await Promise.all(kept.map((one) => tabletVault.open(one).catch(() => undefined)))
    return new Map(names.map((name, index) => [name, values[index]]))
  },
  keep: async (name, value) => {
    await whenIdle()
    const kept = await tabletVault.seal(value)
    await (await tabletDatabase()).put('reads', kept, name)
  },
  drop: async (name) => (await tabletDatabase()).delete('reads', name),
}
