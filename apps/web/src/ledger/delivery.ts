import type { AppendResult } from '@bayledger/contract/entries'
import type { Parcel } from './parcel.ts'

/** What became of a parcel that was sent. */
export type Delivery =
  | { readonly became: 'taken' }
  | { readonly became: 'refused'; readonly problem: unknown }
  /** The server has it not, and may take it later: it answers for this order only. */
  | { readonly became: 'not-yet'; readonly problem: unknown }
  /** No answer came, the server failed, or the session is over. */
  | { readonly became: 'out-of-reach'; readonly problem: unknown }

/** An entry that the ledger did not take. */
export type NotTaken = Exclude<AppendResult, { result: 'accepted' | 'known' }>

/** The server takes 100 entries and 200 sides at once; fewer are lost with an answer that never came. */
const most = { entries: 50, sides: 100 } as const

/**
 * How many of these parcels, from the first on, go out as one: what one person wrote to one order, one after the other and
 * without reading more of it. One parcel always goes, however much it holds.
 */
export const countTogether = (parcels: readonly Parcel[]): number => {
  const [first] = parcels
  if (first === undefined) return 0
  let entries = 0
  let sides = 0
  const end = parcels.findIndex((parcel) => {
    entries += parcel.entries.length
    sides += parcel.sides.length
    return parcel !== first && (!isAlike(parcel, first) || entries > most.entries || sides > most.sides)
  })
  return end < 0 ? parcels.length : end
}

const isAlike = (one: Parcel, other: Parcel): boolean =>
  one.orderId === other.orderId &&
  one.staffId === other.staffId &&
  one.deviceId === other.deviceId &&
  one.heardSeq === other.heardSeq

/** Parcels that go out together, as one. */
export const joined = ([first, ...others]: readonly [Parcel, ...Parcel[]]): Parcel =>
  others.length === 0
    ? first
    : {
        ...first,
        entries: [first, ...others].flatMap(({ entries }) => entries),
        sides: [first, ...others].flatMap(({ sides }) => sides),
      }

/** What became of each parcel, by what became of the entries of all of them. `problemOf`: what a person reads of one. */
export const deliveriesOf = (
  parcels: readonly Parcel[],
  results: readonly AppendResult[],
  problemOf: (notTaken: NotTaken) => unknown,
): Delivery[] => {
  const byId = new Map(results.map((result) => [result.id, result]))
  return parcels.map(({ entries }) => {
    const own = entries.flatMap(({ id }) => byId.get(id) ?? [])
    const notTaken = own.find(isNotTaken)
    if (notTaken !== undefined) return { became: notTaken.result, problem: problemOf(notTaken) }
    return own.length === entries.length ? { became: 'taken' } : { became: 'out-of-reach', problem: null }
  })
}

export const isNotTaken = (result: AppendResult): result is NotTaken =>
  result.result === 'refused' || result.result === 'not-yet'
