import type { Draft } from '@bayledger/ledger/entry'
import type { OrderReply } from '../../apps/web/src/ledger/order.ts'
import { catchUp, type SyncWorld } from '../../apps/web/src/ledger/sync.ts'
import type { Chance } from './chance.ts'
import { type DeskWork, deskWork, openOrder } from './desk-work.ts'
import { heldWhole, newScreen } from './held-order.ts'
import type { Reply, Request, Sender } from './simulated-server.ts'
import type { Holding } from './witness.ts'
import { draftOf, envelopeOf, type Place, saysOf, type World } from './world.ts'

export type Desk = {
  readonly name: string
  readonly work: (chance: Chance) => string | null
  readonly look: (orderId: string) => void
  /** The page is loaded again: what had no answer is forgotten. */
  readonly reload: () => void
  /** The network is back: whoever sits there signs in, unless they are. */
  readonly wake: () => void
  readonly sessionId: () => string
  readonly held: () => ReadonlyMap<string, OrderReply>
}

/** A desk keeps nothing: what it sends is safe once the server has said so, and not before. */
export const newDesk = (world: World, place: Place): Desk => {
  const { network, witness, database } = world
  const screen = newScreen()
  let lives = 0
  let held = new Map<string, OrderReply>()
  let sessionId: string | null = null
  let isWaiting = false
  /** What had no answer: the advisor presses again, and the same entry is sent. */
  let unanswered: Draft | null = null

  const ask = async (asked: (sender: Sender) => Request): Promise<Reply> => {
    if (sessionId === null) return { says: 'nothing' }
    const life = lives
    const session = sessionId
    const sender = { person: place.person, sessionId: session, deviceId: null }
    const reply = await network.call(place.device, asked(sender), () => lives === life)
    if (reply.says === 'problem' && reply.code === 'SESSION_EXPIRED' && sessionId === session)
      sessionId = null
    return reply
  }

  const gained = async (orderId: string, after: number) => {
    const reply = await ask((sender) => ({ asks: 'gained', sender, orderId, after }))
    if (reply.says !== 'gained') throw new Error('no answer')
    return reply.gained
  }

  const sync: SyncWorld = {
    held: (orderId) => held.get(orderId),
    readGained: gained,
    change: (orderId, change) => {
      const now = held.get(orderId)
      if (now) held.set(orderId, change(now))
    },
    readWhole: async (orderId) => {
      const whole = await gained(orderId, 0).catch(() => null)
      if (whole) held.set(orderId, heldWhole(orderId, whole))
    },
  }

  let losses = 0
  const holding: Holding = {
    name: place.device,
    holds: (entryId) => unanswered?.id === entryId,
    losses: () => losses,
  }

  const forget = () => {
    losses += 1
    if (unanswered) witness.givenUp(unanswered.id)
    unanswered = null
  }

  const answered = (draft: Draft, reply: Reply) => {
    isWaiting = false
    const [result] = reply.says === 'results' ? reply.results : []
    if (!result || result.result === 'not-yet') return
    if (result.result !== 'refused' && !database.holds(draft.id))
      world.accuse('lost', `${witness.saysOf(draft.id)} is taken, says the server, and is not there`)
    if (result.result === 'refused' && database.holds(draft.id))
      world.accuse('twice', `${witness.saysOf(draft.id)} is refused, says the server, and is in the ledger`)
    forget()
  }

  const send = async (draft: Draft, request: (sender: Sender) => Request) => {
    isWaiting = true
    const life = lives
    const reply = await ask(request)
    if (life !== lives) return
    answered(draft, reply)
    await catchUp(sync, draft.orderId)
  }

  const append = (draft: Draft) => {
    const entries = [envelopeOf(draft)]
    void send(draft, (sender) => ({ asks: 'append', sender, entries, sides: [] }))
  }

  const write = (draft: Draft): string => {
    const says = saysOf(draft)
    const { id, orderId } = draft
    unanswered = draft
    witness.tapped({ entryId: id, orderId, says, device: holding })
    append(draft)
    return `${place.person} sends ${says} from ${place.device}, ${world.record.nameOf(orderId)}`
  }

  const askForReport = (orderId: string): string => {
    const draft = { id: world.newId(), orderId, kind: 'report.sealed' } as Draft
    unanswered = draft
    witness.tapped({ entryId: draft.id, orderId, says: draft.kind, device: holding })
    void send(draft, (sender) => ({ asks: 'seal', sender, orderId, id: draft.id })).then(forget)
    return `${place.person} asks at ${place.device} for the report, ${world.record.nameOf(orderId)}`
  }

  const signIn = () => {
    sessionId = world.newId()
    database.sessions.set(sessionId, { deviceId: null, isOver: false })
  }

  const doWork = (orderId: string, work: DeskWork): string | null => {
    if (work.kind === 'ask-for-the-report') return askForReport(orderId)
    const draft = draftOf(world, place, orderId, work)
    return draft && write(draft)
  }

  const workOn = (orderId: string, chance: Chance): string | null => {
    const reply = held.get(orderId)
    if (!reply) {
      void catchUp(sync, orderId)
      return `${place.device} opens ${world.record.nameOf(orderId)}`
    }
    const work = deskWork(screen(reply, []).state, chance)
    return work && doWork(orderId, work)
  }

  return {
    name: place.device,
    work: (chance) => {
      if (sessionId === null) {
        signIn()
        return `${place.person} signs in at ${place.device}`
      }
      if (isWaiting) return null
      if (unanswered && unanswered.kind !== 'report.sealed') {
        append(unanswered)
        return `${place.person} presses again at ${place.device}: ${unanswered.kind}`
      }
      forget()
      const open = database.orderIds().filter((orderId) => !isOver(held.get(orderId)))
      if (open.length < 3) return doWork(world.newId(), openOrder)
      const first = chance.below(4)
      const newest = open.slice(-4)
      for (const index of newest.keys()) {
        const words = workOn(newest[(first + index) % newest.length] ?? '', chance)
        if (words !== null) return words
      }
      return open.length < 6 && chance.happens(0.05) ? doWork(world.newId(), openOrder) : null
    },
    wake: () => (sessionId === null ? signIn() : undefined),
    look: (orderId) => void catchUp(sync, orderId),
    reload: () => {
      lives += 1
      isWaiting = false
      held = new Map()
      forget()
    },
    sessionId: () => sessionId ?? '',
    held: () => held,
  }
}

const isOver = (reply: OrderReply | undefined): boolean =>
  reply?.entries.some(({ kind }) => kind === 'order.handed_back' || kind === 'order.withdrawn') ?? false
