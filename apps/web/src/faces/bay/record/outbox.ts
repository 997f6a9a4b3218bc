import type { SentSide } from '@bayledger/contract/entries'
import type { WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { isCallProblem } from '../../../lib/problem.ts'

/** Entries that go together, as one person wrote them. */
export type Parcel = {
  readonly orderId: string
  readonly entries: readonly WrittenDraft[]
  readonly sides: readonly SentSide[]
  /** Names them to a person: "left front gauge". */
  readonly says: string
  readonly staffId: string
  readonly deviceId: string | null
  /** Fills the form in again as it was; called where the ledger does not take the entries. */
  readonly restore: () => void
}

export type Refused = { readonly parcel: Parcel; readonly problem: unknown }

export type OutboxContent = {
  /** Posted and not yet seen in the server's ledger: what a screen shows on top of it. */
  readonly onTop: readonly Parcel[]
  /** Tried and out of reach, or written by someone who is not signed in now. */
  readonly stuck: number
  readonly refused: readonly Refused[]
}

type Waiting = { readonly pin: string | undefined; readonly answer: (problem: unknown) => void }
type Item = { readonly parcel: Parcel; readonly waiting: Waiting | null; readonly tried: boolean }

export type OutboxWorld = {
  readonly send: (parcel: Parcel, pin: string | undefined) => Promise<void>
  /** Whether the server's ledger, as this tablet has read it, holds the entry. */
  readonly isRead: (orderId: string, entryId: string) => boolean
  /** Who is signed in: entries are sent under their writer's own session only. */
  readonly signedIn: () => string | null
  readonly retryAfter: (milliseconds: number, retry: () => void) => void
}

export type Outbox = {
  /** Keeps entries and sends them behind the screen, in the order of posting. */
  readonly post: (parcel: Parcel) => void
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

const firstRetryMilliseconds = 1_000
const lastRetryMilliseconds = 15_000

/** What this tablet has written and the server has not taken yet. Each entry keeps its id, so a retry writes it once. */
export const makeOutbox = (world: OutboxWorld): Outbox => {
  let queue: readonly Item[] = []
  let sent: readonly Parcel[] = []
  let refused: readonly Refused[] = []
  let running: Promise<void> | null = null
  let failures = 0
  let content: OutboxContent = { onTop: [], stuck: 0, refused: [] }
  const listeners = new Set<() => void>()

  const tell = () => {
    sent = sent.filter(({ orderId, entries }) => !entries.every(({ id }) => world.isRead(orderId, id)))
    const shown = queue.filter(({ waiting }) => waiting === null)
    content = {
      onTop: [...sent, ...shown.map(({ parcel }) => parcel)],
      stuck: shown.filter(({ tried, parcel }) => tried || parcel.staffId !== world.signedIn()).length,
      refused,
    }
    for (const listener of listeners) listener()
  }

  const take = (item: Item, problem: unknown) => {
    queue = queue.filter((one) => one !== item)
    if (item.waiting) item.waiting.answer(problem)
    else if (problem === null) sent = [...sent, item.parcel]
    else {
      refused = [...refused, { parcel: item.parcel, problem }]
      item.parcel.restore()
    }
  }

  /** Out of reach: what someone waits for is given up, the rest is kept and tried again. */
  const keep = (item: Item, problem: unknown) => {
    for (const { waiting } of queue) waiting?.answer(problem)
    queue = queue
      .filter(({ waiting }) => waiting === null)
      .map((one) => (one.parcel === item.parcel ? { ...one, tried: true } : one))
    failures += 1
    world.retryAfter(Math.min(firstRetryMilliseconds * 2 ** (failures - 1), lastRetryMilliseconds), pump)
  }

  const run = async () => {
    for (;;) {
      const item = queue.find(({ parcel }) => parcel.staffId === world.signedIn())
      if (item === undefined) break
      const problem = await world.send(item.parcel, item.waiting?.pin).then(
        () => null,
        (thrown: unknown) => thrown,
      )
      if (problem !== null && isOutOfReach(problem)) {
        keep(item, problem)
        break
      }
      failures = 0
      take(item, problem)
      tell()
    }
  }
  const pump = () => {
    running ??= run().finally(() => {
      running = null
      tell()
    })
  }

  const put = (parcel: Parcel, waiting: Waiting | null) => {
    queue = [...queue, { parcel, waiting, tried: false }]
    tell()
    pump()
  }
  return {
    post: (parcel) => put(parcel, null),
    sendAndWait: (parcel, pin) => new Promise((answer) => put(parcel, { pin, answer })),
    wake: () => {
      tell()
      pump()
    },
    drained: async () => running ?? undefined,
    dismiss: (one) => {
      refused = refused.filter((other) => other !== one)
      tell()
    },
    content: () => content,
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}

/** No answer came, the server failed, or the session is over: the same entries may be taken later. */
const isOutOfReach = (thrown: unknown): boolean =>
  isCallProblem(thrown) &&
  (thrown.body.status === 0 ||
    thrown.body.status >= 500 ||
    (thrown.body.status === 401 && !isCallProblem(thrown, 'PIN_REFUSED')))
