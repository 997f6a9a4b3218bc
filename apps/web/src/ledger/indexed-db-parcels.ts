import type { Parcel, ParcelStore, RefusalText } from './parcel.ts'
import { tabletDatabase } from './tablet-database.ts'
import { tabletVault } from './vault.ts'

/** Browsers confirm a write before it is on the disk unless they are set to wait: a power cut then loses it. */
const strict = { durability: 'strict' } as const

const change = async () => (await tabletDatabase()).transaction('parcels', 'readwrite', strict)

/** The parcel that was posted before: sealing takes longer for one than for another, and the order of writing counts. */
let before: Promise<unknown> = Promise.resolve()

/** Loaded behind the list of vehicles, which is what a tablet shows first. */
const loadBox = async () => {
  const { boxOf } = await import('./parcel-box.ts')
  return boxOf
}

/** `null` as well where the network was gone before it was loaded: what was tapped is kept all the same. */
const boxIfLoaded = async (parcel: Parcel): Promise<string | null> => {
  const boxOf = await loadBox().catch(() => null)
  return boxOf === null ? null : boxOf(parcel)
}

const keepNow = async (parcel: Parcel): Promise<number> => {
  const [kept, box] = await Promise.all([tabletVault.seal(parcel), boxIfLoaded(parcel)])
  const changing = await change()
  const number = await changing.store.add({ kept, box, refused: null })
  await changing.done
  return number
}

/** Parcels in IndexedDB, sealed. */
export const indexedDbParcels: ParcelStore = {
  load: async () => {
    // Soon, before the network may drop.
    void loadBox().catch(() => undefined)
    const rows = await (await tabletDatabase()).getAll('parcels')
    const opened = await Promise.all(
      rows.map(async ({ number = 0, kept, refused }) => ({
        number,
        parcel: (await tabletVault.open(kept)) as Parcel,
        problem: refused && ((await tabletVault.open(refused)) as RefusalText),
      })),
    )
    return {
      waiting: opened.flatMap(({ problem, ...kept }) => (problem === null ? [kept] : [])),
      refused: opened.flatMap(({ problem, ...kept }) => (problem === null ? [] : [{ ...kept, problem }])),
    }
  },
  keep: (parcel) => {
    const keeping = before.then(() => keepNow(parcel))
    before = keeping.catch(() => undefined)
    return keeping
  },
  statusOf: async (number) => {
    const row = await (await tabletDatabase()).get('parcels', number)
    if (row === undefined) return 'gone'
    return row.refused === null ? 'waiting' : 'refused'
  },
  refuse: async (number, problem) => {
    const refused = await tabletVault.seal(problem)
    const changing = await change()
    const row = await changing.store.get(number)
    if (row !== undefined) await changing.store.put({ ...row, refused })
    await changing.done
  },
  drop: async (numbers) => {
    const changing = await change()
    await Promise.all([...numbers.map((number) => changing.store.delete(number)), changing.done])
  },
}

/** How many parcels wait on the disk, whether or not this tablet can open them now. */
export const waitingCount = async (): Promise<number> =>
  (await (await tabletDatabase()).getAll('parcels')).filter(({ refused }) => refused === null).length

/** What is sealed to the server and was not taken by it: readable by the server alone. */
export const waitingBoxes = async (): Promise<{ readonly number: number; readonly box: string }[]> => {
  const rows = await (await tabletDatabase()).getAll('parcels')
  return rows.flatMap(({ number, box, refused }) =>
    number !== undefined && box !== null && refused === null ? [{ number, box }] : [],
  )
}
