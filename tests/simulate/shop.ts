import type { Action, Happening } from './action.ts'
import { begunOrders } from './begun-orders.ts'
import { type Chance, chanceOf, seedOf } from './chance.ts'
import { compareStates } from './compare-states.ts'
import { newRecordWatch, type RecordWatch } from './record-watch.ts'
import { type Database, newDatabase, type Statement } from './simulated-database.ts'
import { type Desk, newDesk } from './simulated-desk.ts'
import { type Message, newNetwork } from './simulated-network.ts'
import { type AskedStatement, DatabaseLost, type ServerProcess, startServer } from './simulated-server.ts'
import { newTablet, type Tablet, type TabletPlants } from './simulated-tablet.ts'
import { startTimers } from './timers.ts'
import type { Violation } from './violation.ts'
import { newWitness, type Witness } from './witness.ts'
import type { World } from './world.ts'

/** Faults that a test puts in from outside, to see that they are found. */
export type Plants = TabletPlants & {
  /** What stands between a server and the database. */
  readonly database?: (database: Database) => Database
  /** Answers a server before the database has done the statement; `null`: not this one. */
  readonly answerEarly?: (statement: Statement) => readonly unknown[] | null
}

/** One day of a simulated shop: two servers on one database, three tablets, a desk or two, and a bad network between. */
export type Shop = {
  readonly world: World
  readonly tablets: readonly Tablet[]
  readonly desks: readonly Desk[]
  readonly servers: () => readonly ServerProcess[]
  readonly statements: () => readonly AskedStatement[]
  /** Does one action and all that follows from it at once; gives back what happened, `null`: nothing. */
  readonly act: (action: Action) => Promise<string | null>
  readonly violation: () => Violation | null
  /** Folds everything that anybody holds afresh, and compares. */
  readonly compareAll: () => void
  readonly record: RecordWatch
  readonly witness: Witness
}

/** More than so many things do not go on from one moment: something would be going round in circles. */
const mostUnderWay = 3_000

/** What was written before the day began is older than that. */
const firstMorning = Date.parse('2026-01-12T17:00:00.000Z')

export const openShop = (seed: number, plants: Plants = {}): Shop => {
  let chance = chanceOf(seedOf(seed, 0xd1ce))
  const timers = startTimers(firstMorning)
  let violation: Violation | null = null
  let ids = 0
  let turns: (() => void)[] = []
  let statements: AskedStatement[] = []

  const accuse: World['accuse'] = (fault, words) => {
    violation ??= { fault, words }
  }
  const bare: Database = newDatabase(
    {
      written: (orderId, entries) => record.written(orderId, entries),
      refused: (entryId) => {
        if (bare.holds(entryId))
          accuse('twice', `${witness.saysOf(entryId)} is in the tray and in the ledger`)
      },
    },
    begunOrders,
  )
  const database = plants.database?.(bare) ?? bare
  const witness = newWitness((id) => bare.holds(id) || bare.isRefused(id), accuse)
  const record = newRecordWatch(witness, bare.isRefused, accuse, begunOrders)
  const network = newNetwork(timers, () => delayOf(chance))
  const world: World = {
    timers,
    database,
    network,
    witness,
    record,
    accuse,
    newId: () => {
      ids += 1
      return `019bb1f0-0000-7000-8000-${ids.toString(16).padStart(12, '0')}`
    },
  }

  const serve = (number: number): ServerProcess =>
    startServer(number, {
      database,
      timers,
      ask: (statement) => {
        const early = plants.answerEarly?.(statement)
        if (early) statement.resolve({ rows: early })
        statements.push(statement)
      },
      next: (work) => turns.push(work),
      clockAheadMs: chance.below(20_000) - 10_000,
    })
  const servers = [serve(1), serve(2)]
  const tabletOf = (number: number, person: 'technician' | 'colleague' | 'lead') =>
    newTablet(
      world,
      {
        person,
        device: `tablet ${number}`,
        deviceId: `019bb1f0-0000-7000-9000-00000000000${number}`,
        clockAheadMs: chance.happens(0.1)
          ? chance.below(7_200_000) - 3_600_000
          : chance.below(60_000) - 30_000,
      },
      plants,
    )
  const tablets = [tabletOf(1, 'technician'), tabletOf(2, 'colleague'), tabletOf(3, 'lead')]
  const deskOf = (number: number, person: 'advisor' | 'lead') =>
    newDesk(world, { person, device: `desk ${number}`, deviceId: null, clockAheadMs: 0 })
  const desks = [deskOf(1, 'advisor'), deskOf(2, 'lead')]
  const devices = [...tablets, ...desks]
  const compare = compareStates(record, bare)

  /** Everything that can go on without a message, a disk or the clock goes on. */
  const settle = async () => {
    do {
      await new Promise((resolve) => setImmediate(resolve))
      const due = turns
      turns = []
      for (const work of due) work()
      if (due.length > 0) await new Promise((resolve) => setImmediate(resolve))
    } while (turns.length > 0)
  }

  const run = (statement: AskedStatement): readonly unknown[] | Error => {
    try {
      return database.run(statement)
    } catch (error) {
      if (error instanceof Error && 'constraint' in error) return error
      throw error
    }
  }

  const doStatement = (statement: AskedStatement, fate: 'answers' | 'breaks-before' | 'breaks-after') => {
    statements = statements.filter((one) => one !== statement)
    const result = fate === 'breaks-before' ? new DatabaseLost() : run(statement)
    if (fate !== 'answers') statement.reject(new DatabaseLost())
    else if (result instanceof Error) statement.reject(result)
    else statement.resolve({ rows: result })
  }

  const deliver = (message: Message) => {
    const { device, call, carries } = message
    if ('reply' in carries) return network.hand(call, carries.reply)
    const server = servers[chance.below(servers.length)]
    void server?.handle(carries.request).then((reply) => {
      if (server.isAlive()) network.send({ device, call, carries: { reply } }, delayOf(chance))
    })
  }

  const messageAt = (device: number, pick: number): Message | undefined => {
    const name = devices[device % devices.length]?.name
    const arriving = network.arriving().filter((message) => message.device === name)
    return arriving[pick % Math.max(1, arriving.length)]
  }

  const doing: {
    readonly [D in Exclude<Happening['does'], 'go-on'>]: (
      happening: Extract<Happening, { does: D }>,
    ) => string | null
  } = {
    work: ({ device }) => devices[device % devices.length]?.work(chance) ?? null,
    look: ({ device, order }) => {
      const at = devices[device % devices.length]
      const orders = bare.orderIds().slice(-5)
      const orderId = orders[order % Math.max(1, orders.length)]
      if (!at || orderId === undefined) return null
      at.look(orderId)
      return `${at.name} looks at ${record.nameOf(orderId)}`
    },
    message: ({ device, pick, fate }) => {
      const message = messageAt(device, pick)
      if (!message) return null
      if (fate !== 'arrives-twice') network.take(message)
      if (fate !== 'is-lost') deliver(message)
      return `${saysOfMessage(message)} ${fate.replace('-', ' ')}`
    },
    garble: ({ device, pick }) => {
      const message = messageAt(device, pick)
      if (!message) return null
      network.take(message)
      network.hand(message.call, { says: 'nothing' })
      return `something that is not the service answers ${message.device}`
    },
    statement: ({ server, pick, fate }) => {
      const number = servers[server % servers.length]?.number
      const own = statements.filter(({ serverNumber }) => serverNumber === number)
      const statement = own[pick % Math.max(1, own.length)]
      if (!statement) return null
      doStatement(statement, fate)
      return `the database ${fate.replace('-', ' ')} for server ${statement.serverNumber}: ${statement.name}`
    },
    disk: ({ device, full }) => {
      const tablet = tablets[device % tablets.length]
      const says = tablet?.disk.finish(full)
      return tablet && says
        ? `the disk of ${tablet.name} ${full ? 'is full and fails when it ' : ''}${says}`
        : null
    },
    wait: ({ milliseconds }) => {
      for (const work of timers.pass(milliseconds)) work()
      return `${Math.round(milliseconds / 1000)} s pass`
    },
    reach: ({ device, isInReach }) => {
      const at = devices[device % devices.length]
      if (!at || network.isInReach(at.name) === isInReach) return null
      network.setReach(at.name, isInReach)
      if (isInReach) at.wake()
      return `${at.name} is ${isInReach ? 'in reach again' : 'out of reach'}`
    },
    reboot: ({ device, survive }) => {
      const at = devices[device % devices.length]
      if (!at) return null
      if ('reboot' in at) at.reboot(survive)
      else at.reload()
      return 'reboot' in at
        ? `the power of ${at.name} fails, of its writes under way ${survive} survive`
        : `the page of ${at.name} is loaded again`
    },
    kill: ({ server, done }) => {
      const at = server % servers.length
      const dying = servers[at]
      if (!dying) return null
      const own = statements.filter(({ serverNumber }) => serverNumber === dying.number)
      dying.die()
      statements = statements.filter((one) => !own.includes(one))
      for (const statement of own.slice(0, done)) run(statement)
      servers[at] = serve(dying.number)
      return `server ${dying.number} dies, ${Math.min(done, own.length)} of its ${own.length} statements are done, and starts again`
    },
    'end-session': ({ device }) => {
      const at = devices[device % devices.length]
      const session = at && database.sessions.get(at.sessionId())
      if (!session) return null
      session.isOver = true
      return `the session on ${at.name} ends`
    },
    'change-facts': () => {
      bare.changeFacts()
      return 'the shop’s registers change'
    },
  }

  const happen = async (happening: Exclude<Happening, { does: 'go-on' }>): Promise<string | null> => {
    for (const work of timers.pass(100)) work()
    const words = (doing[happening.does] as (one: Happening) => string | null)(happening)
    await settle()
    witness.check()
    compare(servers, devices)
    for (const tablet of tablets) tablet.content()
    return words
  }

  /** What goes on next of itself, without a fault; `null`: nothing is under way. */
  const nextUnderWay = (): Exclude<Happening, { does: 'go-on' }> | null => {
    const writing = tablets.findIndex(({ disk }) => disk.pending() > 0)
    if (writing >= 0) return { does: 'disk', device: writing, full: false }
    const [statement] = statements
    if (statement) return { does: 'statement', server: statement.serverNumber - 1, pick: 0, fate: 'answers' }
    const [message] = network.arriving()
    const device = devices.findIndex(({ name }) => name === message?.device)
    return message ? { does: 'message', device, pick: 0, fate: 'arrives' } : null
  }

  const act = async ({ luck, ...happening }: Action): Promise<string | null> => {
    chance = chanceOf(luck)
    if (happening.does !== 'go-on') return happen(happening)
    let count = 0
    for (let next = nextUnderWay(); next && count < mostUnderWay && !violation; next = nextUnderWay()) {
      await happen(next)
      count += 1
    }
    return count === 0 ? null : 'everything under way arrives'
  }

  return {
    world,
    tablets,
    desks,
    servers: () => servers,
    statements: () => statements,
    act,
    violation: () => violation,
    compareAll: () => compare(servers, devices, true),
    record,
    witness,
  }
}

/** Most messages take no time to speak of; some take minutes, a few hours. */
const delayOf = (chance: Chance): number => {
  if (!chance.happens(0.03)) return 0
  return chance.happens(0.2) ? chance.below(6 * 3_600_000) : chance.below(120_000)
}

const saysOfMessage = ({ device, carries }: Message): string => {
  if ('reply' in carries) return `the answer to ${device}`
  const { request } = carries
  return request.asks === 'append'
    ? `${request.entries.map(({ kind }) => kind).join(', ')} from ${device}`
    : `a reading from ${device}`
}
