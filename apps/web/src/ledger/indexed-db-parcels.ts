import type { ParcelStore } from './parcel.ts'
import { tabletDatabase } from './tablet-database.ts'

/** Browsers confirm a write before it is on the disk unless they are set to wait: a power cut then loses it. */
const strict = { durability: 'strict' } as const

const change = async () => (await tabletDatabase()).transaction('parcels', 'readwrite', strict)

/** Parcels in IndexedDB. */
export const indexedDbParcels: ParcelStore = {
  load: async () => {
    const rows = await (await tabletDatabase()).getAll('parcels')
    const numbered = rows.map(({ number = 0, parcel, refused }) => ({ number, parcel, refused }))
    return {
      waiting: numbered.flatMap(({ refused, ...kept }) => (refused === null ? [kept] : [])),
      refused: numbered.flatMap(({ refused, ...kept }) =>
        refused === null ? [] : [{ ...kept, problem: refused }],
      ),
    }
  },
  keep: async (parcel) => {
    const changing = await change()
    const number = await changing.store.add({ parcel, refused: null })
    await changing.done
    return number
  },
  statusOf: async (number) => {
    const row = await (await tabletDatabase()).get('parcels', number)
    if (row === undefined) return 'gone'
    return row.refused === null ? 'waiting' : 'refused'
  },
  refuse: async (number, problem) => {
    const changing = await change()
    const row = await changing.store.get(number)
    if (row !== undefined) await changing.store.put({ ...row, refused: problem })
    await changing.done
  },
  drop: async (number) => {
    const changing = await change()
    await changing.store.delete(number)
    await changing.done
  },
}
