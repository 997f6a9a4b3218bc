import type { FilledForm, KeptParcel, Parcel, ParcelStore, RefusalText, Refused } from './parcel.ts'

/** What became of a parcel that was sent. */
export type Delivery =
  | { readonly became: 'taken' }
  | { readonly became: 'refused'; readonly problem: unknown }
  /** The server has it not, and may take it later: it answers for this order only. */
  | { readonly became: 'not-yet'; readonly problem: unknown }
  /** No answer came, the server failed, or the session is over. */
  | { readonly became: 'out-of-reach'; readonly problem: unknown }

export type OutboxContent = {
  /** Posted and not yet seen in the server's ledger: what a screen shows on top of it. */
  readonly onTop: readonly Parcel[]
  /** Tried and out of reach, or written by someone who is not signed in now. */
  readonly stuck: number
  readonly refused: readonly Refused[]
}

export type OutboxWorld = {
  readonly store: ParcelStore
  readonly send: (parcel: Parcel, pin: string | undefined) => Promise<Delivery>
  /** Whether the server's ledger, as this tablet has read it, holds the entry. */
  readonly isRead: (orderId: string, entryId: string) => boolean
  /** Who is signed in: entries are sent under their writer's own session only. */
  readonly signedIn: () => string | null
  readonly retryAfter: (milliseconds: number, retry: () => void) => void
  /** One page of a tablet sends at a time: does the work while no other page does any. */
  readonly alone: (work: () => Promise<void>) => Promise<void>
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
  /** Sends entries after everything posted before; resolves to what went wrong, or null. Nothing is shown meanwhile. */
  readonly sendAndWait: (parcel: Parcel, pin?: string) => Promise<unknown>
  /** Tries again: the network is back, or someone signed in. */
  readonly wake: () => void
  /** Resolves when nothing is on its way. */
  readonly drained: () => Promise<void>
  readonly dismiss: (refused: Refused) => void
  readonly content: () => OutboxContent
  readonly subscribe: (listener: () => void) => () => void
}

/** `kept`: the parcel's number, once a power cut would not lose it. */
type Posted = {
  readonly is: 'posted'
  readonly parcel: Parcel
  readonly kept: Promise<number>
  tried: boolean
}
type Waiting = {
  readonly is: 'waiting'
  readonly parcel: Parcel
  readonly pin: string | undefined
  readonly answer: (problem: unknown) => void
}
type Item = Posted | Waiting

const firstRetryMilliseconds = 1_000
const lastRetryMilliseconds = 15_000

/**
 * What this tablet has written and the server has not taken yet, kept in `world.store` through reloads and power cuts.
 * Nothing is sent before it is kept, and nothing is dropped before the server has answered for it. Each entry keeps its
 * id, so a retry writes it once.
 */
export const makeOutbox = (world: OutboxWorld): Outbox => {
  let queue: readonly Item[] = []
  let sent: readonly Parcel[] = []
  let refused: readonly Refused[] = []
  let running: Promise<void> | null = null
  let failures = 0
  let isRetrySet = false
  /** Something came while the last look at the queue was under way. */
  let isCalledAgain = false
  let content: OutboxContent = { onTop: [], stuck: 0, refused: [] }
  const listeners = new Set<() => void>()

  const show = () => {
    sent = sent.filter(({ orderId, entries }) => !entries.every(({ id }) => world.isRead(orderId, id)))
    const posted = queue.filter((item) => item.is === 'posted')
    content = {
      onTop: [...sent, ...posted.map(({ parcel }) => parcel)],
      stuck: posted.filter(({ tried, parcel }) => tried || parcel.staffId !== world.signedIn()).length,
      refused,
    }
    for (const listener of listeners) listener()
  }

  const remove = (item: Item) => {
    queue = queue.filter((one) => one !== item)
  }

  const reject = (parcel: Parcel, number: number, problem: unknown) => {
    refused = [...refused, { number, parcel, problem: world.textOf(problem) }]
    if (parcel.form) world.refill(parcel.form)
  }

  /** Settles a parcel that was posted; gives back whether the next one may go. */
  const settlePosted = async (item: Posted, number: number, delivery: Delivery): Promise<boolean> => {
    if (delivery.became === 'taken') {
      // First on the list of what is sent, then out of the store: whatever is shown is kept somewhere.
      sent = [...sent, item.parcel]
      remove(item)
      await world.store.drop(number)
    } else if (delivery.became === 'refused') {
      await world.store.refuse(number, world.textOf(delivery.problem))
      remove(item)
      reject(item.parcel, number, delivery.problem)
    } else {
      item.tried = true
      if (delivery.became === 'out-of-reach') return false
    }
    return true
  }

  const settleWaiting = (item: Waiting, delivery: Delivery): boolean => {
    remove(item)
    item.answer(delivery.became === 'taken' ? null : delivery.problem)
    return delivery.became !== 'out-of-reach'
  }

  /** Out of reach: what someone waits for is given up, the rest is kept and tried again. */
  const pause = (problem: unknown) => {
    for (const item of queue)
      if (item.is === 'waiting') settleWaiting(item, { became: 'out-of-reach', problem })
    failures += 1
    if (isRetrySet) return
    isRetrySet = true
    const wait = Math.min(firstRetryMilliseconds * 2 ** (failures - 1), lastRetryMilliseconds)
    world.retryAfter(wait, () => {
      isRetrySet = false
      pump()
    })
  }

  const run = async () => {
    const held = new Set<string>()
    for (;;) {
      const item = queue.find(
        ({ parcel }) => parcel.staffId === world.signedIn() && !held.has(parcel.orderId),
      )
      if (item === undefined) return
      if (item.is === 'posted') {
        const number = await item.kept.catch(() => null)
        const status = number === null ? 'not-kept' : await world.store.statusOf(number)
        if (number === null || status !== 'waiting') {
          remove(item)
          if (status === 'gone') sent = [...sent, item.parcel]
          continue
        }
        const delivery = await world.send(item.parcel, undefined)
        if (delivery.became === 'not-yet') held.add(item.parcel.orderId)
        if (!(await settlePosted(item, number, delivery)) && 'problem' in delivery)
          return pause(delivery.problem)
      } else {
        const delivery = await world.send(item.parcel, item.pin)
        if (!settleWaiting(item, delivery) && 'problem' in delivery) return pause(delivery.problem)
      }
      failures = 0
      show()
    }
  }

  const opening = world.store.load().then(
    (kept) => {
      queue = [...kept.waiting.map(asPosted), ...queue]
      refused = [...kept.refused, ...refused]
      show()
    },
    // A store that cannot be read is met again by the first parcel that it is to keep.
    () => undefined,
  )

  const pump = () => {
    if (running !== null) {
      isCalledAgain = true
      return
    }
    isCalledAgain = false
    running = opening
      .then(() => world.alone(run))
      .catch((cause: unknown) => pause(world.notKept(cause)))
      .then(() => {
        running = null
        show()
        if (isCalledAgain) pump()
      })
  }

  void opening.then(pump)

  const put = (item: Item) => {
    queue = [...queue, item]
    show()
    pump()
  }

  return {
    post: async (parcel) => {
      const item: Posted = { is: 'posted', parcel, kept: world.store.keep(parcel), tried: false }
      put(item)
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
    sendAndWait: (parcel, pin) => new Promise((answer) => put({ is: 'waiting', parcel, pin, answer })),
    wake: () => {
      show()
      pump()
    },
    drained: async () => running ?? undefined,
    dismiss: (one) => {
      refused = refused.filter((other) => other !== one)
      show()
      // Where this fails the notice comes back with the next start, and is read once more.
      world.store.drop(one.number).catch(() => undefined)
    },
    content: () => content,
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}

const asPosted = ({ number, parcel }: KeptParcel): Posted => ({
  is: 'posted',
  parcel,
  kept: Promise.resolve(number),
  tried: false,
})
