import type { Accuse } from './violation.ts'

/** An entry as somebody tapped it. */
export type Tap = {
  readonly entryId: string
  readonly orderId: string
  readonly says: string
  readonly device: Holding
}

/** A device as far as it holds entries. */
export type Holding = {
  readonly name: string
  /** Whether it holds an entry: in its memory, on its disk or on the way there. */
  readonly holds: (entryId: string) => boolean
  /** Rises whenever it holds one entry less. */
  readonly losses: () => number
}

/** Keeps account of every entry that anybody tapped, from the tap until the server holds it. */
export type Witness = {
  readonly tapped: (tap: Tap) => void
  /** The device has said that the entry is safe. */
  readonly acknowledged: (entryId: string) => void
  /** The device has said that it does not have it, or the power failed before it said anything. */
  readonly givenUp: (entryId: string) => void
  /** A person has read that it was refused, and why. */
  readonly readRefusal: (entryId: string) => void
  readonly wasTapped: (entryId: string) => boolean
  readonly saysOf: (entryId: string) => string
  /** Looks for every entry that is not home yet. */
  readonly check: () => void
  readonly open: () => readonly string[]
}

export const newWitness = (isHome: (entryId: string) => boolean, accuse: Accuse): Witness => {
  const taps = new Map<string, Tap>()
  const open = new Map<Holding, Set<string>>()
  const looked = new Map<Holding, number>()
  const acknowledged = new Set<string>()
  const saysOf = (entryId: string): string => {
    const tap = taps.get(entryId)
    return tap ? `"${tap.says}" of ${tap.device.name}` : `entry ${entryId}, which nobody tapped,`
  }
  const openOf = (device: Holding): Set<string> => {
    const known = open.get(device) ?? new Set()
    open.set(device, known)
    return known
  }
  const close = (entryId: string) => {
    const tap = taps.get(entryId)
    if (tap) openOf(tap.device).delete(entryId)
  }
  const look = (device: Holding, entries: Set<string>) => {
    for (const entryId of entries) {
      if (isHome(entryId)) entries.delete(entryId)
      else if (!device.holds(entryId))
        accuse(
          'lost',
          `${saysOf(entryId)} is neither in the ledger nor on its device nor in a tray${
            acknowledged.has(entryId) ? ', and its device had said that it is safe' : ''
          }`,
        )
    }
  }
  return {
    tapped: (tap) => {
      taps.set(tap.entryId, tap)
      openOf(tap.device).add(tap.entryId)
    },
    acknowledged: (entryId) => void acknowledged.add(entryId),
    givenUp: (entryId) => {
      if (!acknowledged.has(entryId)) close(entryId)
    },
    readRefusal: close,
    wasTapped: (entryId) => taps.has(entryId),
    saysOf,
    check: () => {
      for (const [device, entries] of open) {
        const losses = device.losses()
        if (looked.get(device) === losses) continue
        looked.set(device, losses)
        look(device, entries)
      }
    },
    open: () => {
      for (const [device, entries] of open) look(device, entries)
      return [...open.values()].flatMap((entries) => [...entries])
    },
  }
}
