import type { KeptParcel, Parcel, ParcelStore, RefusalText } from '../../apps/web/src/ledger/parcel.ts'

type Row = { readonly parcel: Parcel; readonly refused: RefusalText | null }

/** A write that the tablet was asked for and has not confirmed. */
type Pending = {
  readonly says: string
  readonly apply: () => void
  readonly confirm: () => void
  readonly fail: (cause: Error) => void
}

/**
 * A tablet's storage. A write that was confirmed survives everything. Of those that were not, a power cut keeps the first
 * few, perhaps none: one store writes in the order in which it was asked.
 */
export type Disk = {
  readonly store: ParcelStore
  /** How many writes are under way. */
  readonly pending: () => number
  /** The oldest write under way is on the disk, or fails because the disk is full. Gives back what it was. */
  readonly finish: (isFull: boolean) => string | null
  /**
   * The power fails: the first `survive` of the writes under way are on the disk, and nobody hears of any. Gives back the
   * entries that were on their way there and are not.
   */
  readonly cut: (survive: number) => readonly string[]
  /** The parcel that holds an entry and whether it was refused, on the disk or on its way there. */
  readonly find: (entryId: string) => 'waiting' | 'refused' | null
  /** The number of the parcel that holds an entry, or is on its way there. */
  readonly numberOf: (entryId: string) => number | null
  /** How often it has lost hold of an entry, for whatever reason. */
  readonly losses: () => number
}

export const newDisk = (): Disk => {
  const rows = new Map<number, Row>()
  /** By entry: its parcel's number. A parcel on its way to the disk is here too. */
  const places = new Map<string, number>()
  const onTheirWay = new Map<number, Parcel>()
  let pending: Pending[] = []
  let last = 0
  let lastOnDisk = 0
  let losses = 0

  const loose = (id: string) => {
    losses += 1
    places.delete(id)
  }

  const giveUp = (number: number) => {
    for (const { id } of onTheirWay.get(number)?.entries ?? []) if (places.get(id) === number) loose(id)
    onTheirWay.delete(number)
  }

  const write = <T>(says: string, value: T, apply: () => void, abandon = () => {}): Promise<T> =>
    new Promise((resolve, reject) => {
      const fail = (cause: Error) => {
        abandon()
        reject(cause)
      }
      pending.push({ says, apply, confirm: () => resolve(value), fail })
    })

  const put = (number: number, row: Row) => {
    rows.set(number, row)
    onTheirWay.delete(number)
    lastOnDisk = number
    for (const { id } of row.parcel.entries) places.set(id, number)
  }

  const remove = (number: number) => {
    for (const { id } of rows.get(number)?.parcel.entries ?? []) loose(id)
    rows.delete(number)
  }

  const all = (): (KeptParcel & Row)[] =>
    [...rows].toSorted(([one], [other]) => one - other).map(([number, row]) => ({ number, ...row }))

  const store: ParcelStore = {
    load: async () => ({
      waiting: all().flatMap(({ refused, ...kept }) => (refused === null ? [kept] : [])),
      refused: all().flatMap(({ refused, ...kept }) =>
        refused === null ? [] : [{ ...kept, problem: refused }],
      ),
    }),
    keep: (parcel) => {
      last += 1
      const number = last
      onTheirWay.set(number, parcel)
      for (const { id } of parcel.entries) places.set(id, number)
      const keep = () => put(number, { parcel, refused: null })
      return write(`keeps ${parcel.says}`, number, keep, () => giveUp(number))
    },
    statusOf: async (number) => {
      const row = rows.get(number)
      return row === undefined ? 'gone' : row.refused === null ? 'waiting' : 'refused'
    },
    refuse: (number, problem) =>
      write('keeps a refusal', undefined, () => {
        const row = rows.get(number)
        if (row) rows.set(number, { ...row, refused: problem })
      }),
    drop: (numbers) => write('forgets what the server has', undefined, () => numbers.forEach(remove)),
  }

  return {
    store,
    pending: () => pending.length,
    finish: (isFull) => {
      const [first, ...others] = pending
      if (!first) return null
      pending = others
      if (isFull) first.fail(new Error('the disk is full'))
      else {
        first.apply()
        first.confirm()
      }
      return first.says
    },
    cut: (survive) => {
      for (const { apply } of pending.slice(0, survive)) apply()
      pending = []
      const gone = [...onTheirWay.values()].flatMap(({ entries }) => entries.map(({ id }) => id))
      for (const number of [...onTheirWay.keys()]) giveUp(number)
      last = lastOnDisk
      return gone
    },
    find: (entryId) => {
      const number = places.get(entryId)
      if (number === undefined) return null
      return rows.get(number)?.refused ? 'refused' : 'waiting'
    },
    numberOf: (entryId) => places.get(entryId) ?? null,
    losses: () => losses,
  }
}
