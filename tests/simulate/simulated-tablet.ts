import type { AppendResult } from '@bayledger/contract/entries'
import type { Draft } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import type { OrderState } from '@bayledger/ledger/state'
import { refusedHere } from '../../apps/web/src/ledger/admit-here.ts'
import { type Delivery, deliveriesOf, joined } from '../../apps/web/src/ledger/delivery.ts'
import type { OrderReply } from '../../apps/web/src/ledger/order.ts'
import {
  makeOutbox,
  type Outbox,
  type OutboxContent,
  type OutboxWorld,
} from '../../apps/web/src/ledger/outbox.ts'
import type { Parcel } from '../../apps/web/src/ledger/parcel.ts'
import { catchUp, hearFirst, type SyncWorld } from '../../apps/web/src/ledger/sync.ts'
import { looseWheels, movesOnTheRoad } from './bare-record.ts'
import { bayWork } from './bay-work.ts'
import type { Chance } from './chance.ts'
import { heldWhole, newScreen } from './held-order.ts'
import { knownAt, people } from './shop-tables.ts'
import { type Disk, newDisk } from './simulated-disk.ts'
import type { Reply, Request, Sender } from './simulated-server.ts'
import type { Holding } from './witness.ts'
import { draftOf, envelopeOf, type Place, saysOf, type World } from './world.ts'

/** Puts a fault where the outbox meets its world; a test's own. */
export type OutboxPlant = (world: OutboxWorld, disk: Disk) => OutboxWorld
/** Puts a fault where the tablet keeps and hears what others wrote. */
export type SyncPlant = (world: SyncWorld) => SyncWorld
export type TabletPlants = { readonly outbox?: OutboxPlant; readonly sync?: SyncPlant }

export type Tablet = {
  readonly name: string
  readonly disk: Disk
  /** Its person does the next thing that the tablet shows; gives back what, `null` where nothing is to be done. */
  readonly work: (chance: Chance) => string | null
  /** Reads what an order gained. */
  readonly look: (orderId: string) => void
  /** The power fails and comes back; so many writes under way are on the disk. */
  readonly reboot: (survive: number) => void
  /** The network is back, or somebody signs in. */
  readonly wake: () => void
  readonly sessionId: () => string
  readonly content: () => OutboxContent
  /** The orders that it has read, as the server sent them. */
  readonly held: () => ReadonlyMap<string, OrderReply>
  /** What such an order folds to. */
  readonly stateOf: (reply: OrderReply) => OrderState
}

export const newTablet = (world: World, place: Place, plants: TabletPlants = {}): Tablet => {
  const { network, witness, timers } = world
  const disk = newDisk()
  const holding: Holding = {
    name: place.device,
    holds: (entryId) => disk.find(entryId) !== null,
    losses: disk.losses,
  }
  const staffId = people[place.person].id
  let lives = 0
  let held = new Map<string, OrderReply>()
  /** What was on the disk of it before the last change: a power cut may lose that change. */
  let heldBefore = held
  let sessionId: string | null = null
  let outbox: Outbox
  let screen = newScreen()
  let refusedBefore: OutboxContent['refused'] = []

  const keepHeld = (orderId: string, reply: OrderReply) => {
    heldBefore = held
    held = new Map(held).set(orderId, reply)
  }

  const ask = async (asked: (sender: Sender) => Request): Promise<Reply> => {
    const life = lives
    const session = sessionId
    const sender = { person: place.person, sessionId: session ?? '', deviceId: place.deviceId }
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

  const bareSync: SyncWorld = {
    held: (orderId) => held.get(orderId),
    readGained: gained,
    change: (orderId, change) => {
      const now = held.get(orderId)
      if (now) keepHeld(orderId, change(now))
    },
    readWhole: async (orderId) => {
      const whole = await gained(orderId, 0).catch(() => null)
      if (whole) keepHeld(orderId, heldWhole(orderId, whole))
    },
  }
  const sync = plants.sync?.(bareSync) ?? bareSync

  /** Under the tablet's own enrollment, whoever is signed in. */
  const deliver = async (parcels: readonly Parcel[], waited: boolean): Promise<readonly Delivery[]> => {
    const [first, ...others] = parcels
    if (first === undefined) return []
    const { entries, sides, heardSeq } = joined([first, ...others])
    const heard = { seq: heardSeq, waited }
    const reply = await ask((sender) => ({ asks: 'append', sender, entries, sides, heard }))
    if (reply.says !== 'results') return parcels.map(() => ({ became: 'out-of-reach', problem: reply }))
    for (const result of reply.results) holdToItsWord(result)
    return deliveriesOf(parcels, reply.results, (notTaken) => notTaken)
  }

  /** What the server says of an entry is true of the database at that moment. */
  const holdToItsWord = (result: AppendResult) => {
    const { id } = result
    const isThere =
      result.result === 'accepted' || result.result === 'known'
        ? world.database.holds(id)
        : result.result !== 'refused' || !result.kept || world.database.isRefused(id)
    if (!isThere)
      world.accuse('lost', `${witness.saysOf(id)} is "${result.result}", says the server, and is not there`)
  }

  const start = () => {
    lives += 1
    const life = lives
    screen = newScreen()
    const outboxWorld: OutboxWorld = {
      store: disk.store,
      send: async (parcels, waited) => {
        const deliveries = await deliver(parcels, waited)
        const [first] = parcels
        if (first !== undefined) await catchUp(sync, first.orderId)
        return deliveries
      },
      isRead: (orderId, entryId) => held.get(orderId)?.entries.some(({ id }) => id === entryId) ?? false,
      maySend: () => true,
      retryAfter: (milliseconds, retry) => timers.after(milliseconds, retry, () => lives === life),
      alone: (work) => work(),
      refill: () => undefined,
      textOf: (problem) => ({ title: JSON.stringify(problem), detail: '' }),
      notKept: (cause) => cause,
    }
    outbox = makeOutbox(plants.outbox?.(outboxWorld, disk) ?? outboxWorld)
  }
  start()

  const signIn = () => {
    sessionId = world.newId()
    world.database.sessions.set(sessionId, { deviceId: place.deviceId, isOver: false })
    outbox.wake()
  }

  const write = (reply: OrderReply, draft: Draft): string => {
    const { id, orderId } = draft
    const says = saysOf(draft)
    const { onTop } = outbox.content()
    const parcel: Parcel = {
      orderId,
      entries: [envelopeOf(draft)],
      sides: [],
      says,
      staffId,
      deviceId: place.deviceId,
      heardSeq: reply.head.seq,
      form: null,
    }
    const refusal = refusedHere(reply, onTop, parcel, knownAt(timers.now()))
    if (refusal) return `${place.device} refuses ${says}: ${refusal.code}`
    const loose = movesOnTheRoad(draft) ? looseWheels(screen(reply, onTop).entries) : []
    if (loose.length > 0)
      world.accuse('gates', `${place.device} lets the vehicle on the road with ${loose.join(', ')} loose`)
    witness.tapped({ entryId: id, orderId, says, device: holding })
    void outbox.post(parcel).then((isKept) => (isKept ? witness.acknowledged(id) : witness.givenUp(id)))
    return `${place.person} writes ${says} on ${place.device}, ${world.record.nameOf(orderId)}`
  }

  /** The road opens on what every tablet recorded: the server says it, or this one alone holds the order. */
  const leave = (draft: Draft): string => {
    const life = lives
    void hearFirst(sync, draft.orderId).then((standing) => {
      const reply = held.get(draft.orderId)
      if (life !== lives || standing === 'unheard' || !reply) return
      if (standing === 'alone' && !reply.heldAlone)
        world.accuse('gates', `${place.device} lets the vehicle leave unheard, and another tablet holds it`)
      write(reply, draft)
    })
    return `${place.person} wants to leave with ${world.record.nameOf(draft.orderId)}, says ${place.device}`
  }

  const workOn = (orderId: string, chance: Chance): string | null => {
    const reply = held.get(orderId)
    if (!reply) {
      if (!network.isInReach(place.device)) return null
      void catchUp(sync, orderId)
      return `${place.device} opens ${world.record.nameOf(orderId)}`
    }
    const read = screen(reply, outbox.content().onTop)
    const isOver = read.state.handedBack !== null || read.state.ended !== null
    const work = isOver ? null : bayWork(read, place.person, chance)
    const draft = work && draftOf(world, place, orderId, work)
    return draft && (draft.kind === 'drive.left' ? leave(draft) : write(reply, draft))
  }

  return {
    name: place.device,
    disk,
    work: (chance) => {
      if (sessionId === null) {
        if (!network.isInReach(place.device)) return null
        signIn()
        return `${place.person} signs in on ${place.device}`
      }
      const [refused] = outbox.content().refused
      if (refused && chance.happens(0.3)) {
        for (const { id } of refused.parcel.entries) witness.readRefusal(id)
        outbox.dismiss(refused)
        return `${place.person} reads on ${place.device} that ${refused.parcel.says} was refused`
      }
      for (const orderId of ordersFor(world, place, chance)) {
        const words = workOn(orderId, chance)
        if (words !== null) return words
      }
      return null
    },
    look: (orderId) => void catchUp(sync, orderId),
    reboot: (survive) => {
      for (const id of disk.cut(survive)) witness.givenUp(id)
      held = heldBefore
      start()
    },
    wake: () => (sessionId === null ? signIn() : outbox.wake()),
    sessionId: () => sessionId ?? '',
    content: () => {
      const content = outbox.content()
      if (content.refused !== refusedBefore) {
        refusedBefore = content.refused
        for (const { parcel } of content.refused)
          for (const { id } of parcel.entries)
            if (world.database.holds(id))
              world.accuse('twice', `${witness.saysOf(id)} is shown as refused and is in the ledger`)
      }
      return content
    },
    held: () => held,
    stateOf: (reply) => fold(reply.entries as Parameters<typeof fold>[0]),
  }
}

/** The shop works on its newest orders; each tablet has one that it mostly begins with. */
const ordersFor = ({ database }: World, { deviceId }: Place, chance: Chance): readonly string[] => {
  const orders = database.orderIds().slice(-4)
  const own = Number(deviceId?.at(-1) ?? 0)
  const first = chance.happens(0.6) ? own : chance.below(4)
  return orders.map((_, index) => orders[(first + index) % orders.length] ?? '')
}
