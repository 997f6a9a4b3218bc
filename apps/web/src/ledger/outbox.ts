import { type BehindScreenWorld, makeBehindScreen, type Rest } from './behind-screen.ts'
import { countTogether, type Delivery } from './delivery.ts'
import type { FilledForm, KeptParcel, Parcel, ParcelStore, RefusalText, Refused } from './parcel.ts'

export type OutboxContent = {
  /** Posted and not yet seen in the server's ledger: what a screen shows on top of it. The same list until it changes. */
  readonly onTop: readonly Parcel[]
  /** Posted and not yet taken by the server; `null`: what the tablet keeps was not read, so that nobody knows. */
  readonly unsent: number | null
  /** Of these: tried and out of reach, or waiting for their writer to sign in. */
  readonly stuck: number
  readonly refused: readonly Refused[]
}

export type OutboxWorld = BehindScreenWorld & {
  readonly store: ParcelStore
  /**
   * Sends parcels that go together and gives what became of each, in their order; those that it says nothing of were not
   * sent. `waited`: one of them was tried before, or kept through a reboot, so that their writer may not have heard what
   * came since.
   */
  readonly send: (parcels: readonly Parcel[], waited: boolean) => Promise<readonly Delivery[]>
  /** Whether the server's ledger, as this tablet has read it, holds the entry. */
  readonly isRead: (orderId: string, entryId: string) => boolean
  /** Whether a parcel may go out now: a tablet without a key sends under its writer's own session only. */
  readonly maySend: (parcel: Parcel) => boolean
  /** Fills a form in again as it was. */
  readonly refill: (form: FilledForm) => void
  /** What a person reads of a problem. */
  readonly textOf: (problem: unknown) => RefusalText
  /** The tablet itself could not keep a parcel: its storage is full or broken. */
  readonly notKept: (cause: unknown) => unknown
}

export type Outbox = {
  /**
   * Keeps entries and sends them behind the screen, in the order of posting. They are shown at once; the promise
   * resolves to whether the tablet holds them so that a power cut loses none of them.
   */
  readonly post: (parcel: Parcel) => Promise<boolean>
  /** Tries again: the network is back, or someone signed in. */
  readonly wake: () => void
  /** Resolves when nothing is on its way. */
  readonly drained: () => Promise<void>
  /** Whether the page may go: everything posted is kept. */
  readonly allKept: () => Promise<boolean>
  readonly dismiss: (refused: Refused) => void
  readonly content: () => OutboxContent
  readonly subscribe: (listener: () => void) => () => void
}

/** `kept`: the parcel's number, once a power cut would not lose it. */
type Posted = { readonly parcel: Parcel; readonly kept: Promise<number>; tried: boolean }

type Waiting = { readonly item: Posted; readonly number: number }

/**
 * What this tablet has written and the server has not taken yet, kept in `world.store` through reloads and power cuts.
 * Nothing is sent before it is kept, and nothing is dropped before the server has answered for it. Each entry keeps its
 * id, so a retry writes it once.
 */
export const makeOutbox = (world: OutboxWorld): Outbox => {
  let queue: readonly Posted[] = []
  let sent: readonly Parcel[] = []
  let refused: readonly Refused[] = []
  let isRead = false
  let content: OutboxContent = { onTop: [], unsent: null, stuck: 0, refused: [] }
  const listeners = new Set<() => void>()

  const show = () => {
    sent = sent.filter(({ orderId, entries }) => !entries.every(({ id }) => world.isRead(orderId, id)))
    const onTop = [...sent, ...queue.map(({ parcel }) => parcel)]
    const isSame =
      onTop.length === content.onTop.length && onTop.every((one, at) => one === content.onTop[at])
    content = {
      onTop: isSame ? content.onTop : onTop,
      unsent: isRead || queue.length > 0 ? queue.length : null,
      stuck: queue.filter(({ tried, parcel }) => tried || !world.maySend(parcel)).length,
      refused,
    }
    for (const listener of listeners) listener()
  }

  const remove = (...items: readonly Posted[]) => {
    queue = queue.filter((one) => !items.includes(one))
  }

  const reject = (parcel: Parcel, number: number, problem: unknown) => {
    refused = [...refused, { number, parcel, problem: world.textOf(problem) }]
    if (parcel.form) world.refill(parcel.form)
  }

  /** Of these, the parcels that are still to be sent; the others are done with. */
  const stillWaiting = async (items: readonly Posted[]): Promise<Waiting[]> => {
    const looked = await Promise.all(
      items.map(async (item) => {
        const number = await item.kept.catch(() => null)
        return { item, number, status: number === null ? 'not-kept' : await world.store.statusOf(number) }
      }),
    )
    return looked.flatMap(({ item, number, status }) => {
      if (number !== null && status === 'waiting') return [{ item, number }]
      remove(item)
      if (status === 'gone') sent = [...sent, item.parcel]
      return []
    })
  }

  const settleTaken = async (taken: readonly Waiting[]): Promise<void> => {
    // First on the list of what is sent, then out of the store: whatever is shown is kept somewhere.
    sent = [...sent, ...taken.map(({ item }) => item.parcel)]
    remove(...taken.map(({ item }) => item))
    await world.store.drop(taken.map(({ number }) => number))
  }

  const settleRefused = async ({ item, number }: Waiting, problem: unknown): Promise<void> => {
    const isPointless = takesBackRefused(item.parcel, refused)
    await (isPointless ? world.store.drop([number]) : world.store.refuse(number, world.textOf(problem)))
    remove(item)
    if (!isPointless) reject(item.parcel, number, problem)
  }

  const sendAll = async (progressed: () => void): Promise<Rest> => {
    await opening
    const held = new Set<string>()
    for (;;) {
      const sendable = queue.filter(({ parcel }) => world.maySend(parcel) && !held.has(parcel.orderId))
      const together = sendable.slice(0, countTogether(sendable.map(({ parcel }) => parcel)))
      if (together.length === 0) return 'nothing-left'
      const waiting = await stillWaiting(together)
      if (waiting.length === 0) continue
      const items = waiting.map(({ item }) => item)
      const deliveries = await world.send(
        items.map(({ parcel }) => parcel),
        items.some(({ tried }) => tried),
      )
      const settled = waiting.flatMap((one, index) => {
        const delivery = deliveries[index]
        return delivery === undefined ? [] : [{ ...one, delivery }]
      })
      await settleTaken(settled.filter(({ delivery }) => delivery.became === 'taken'))
      for (const { item, number, delivery } of settled) {
        if (delivery.became === 'refused') await settleRefused({ item, number }, delivery.problem)
        if (delivery.became === 'not-yet' || delivery.became === 'out-of-reach') item.tried = true
        if (delivery.became === 'not-yet') held.add(item.parcel.orderId)
      }
      if (settled.some(({ delivery }) => delivery.became === 'out-of-reach')) return 'rest-left'
      progressed()
      show()
    }
  }

  const opening = world.store.load().then(
    (kept) => {
      queue = [...kept.waiting.map(asPosted), ...queue]
      refused = [...kept.refused, ...refused]
      isRead = true
      show()
    },
    // A store that cannot be read is met again by the first parcel that it is to keep.
    () => undefined,
  )

  const sending = makeBehindScreen(world, sendAll, show)
  sending.wake()

  return {
    post: async (parcel) => {
      const item: Posted = { parcel, kept: world.store.keep(parcel), tried: false }
      queue = [...queue, item]
      show()
      sending.wake()
      return item.kept.then(
        () => true,
        (cause: unknown) => {
          remove(item)
          reject(parcel, 0, world.notKept(cause))
          show()
          return false
        },
      )
    },
    wake: () => {
      show()
      sending.wake()
    },
    drained: sending.drained,
    allKept: async () => {
      const asked = queue
      await Promise.allSettled(asked.map(({ kept }) => kept))
      return queue.every((item) => asked.includes(item))
    },
    dismiss: (one) => {
      refused = refused.filter((other) => other !== one)
      show()
      // Where this fails the notice comes back with the next start, and is read once more.
      world.store.drop([one.number]).catch(() => undefined)
    },
    content: () => content,
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}

const asPosted = ({ number, parcel }: KeptParcel): Posted => ({
  parcel,
  kept: Promise.resolve(number),
  tried: true,
})

/** Whether a parcel only takes back what was refused already: then there is nothing left to take back. */
const takesBackRefused = ({ entries }: Parcel, refused: readonly Refused[]): boolean => {
  const ids = new Set(refused.flatMap(({ parcel }) => parcel.entries.map(({ id }) => id)))
  return entries.every(
    ({ kind, restsOn }) =>
      kind === 'entry.struck' && restsOn.length > 0 && restsOn.every((id) => ids.has(id)),
  )
}
