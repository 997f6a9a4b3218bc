import type { AppendResult, Heard, SentSide } from '@bayledger/contract/entries'
import type { Draft, DraftEnvelope } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import type { Pool } from 'pg'
import { mint, type StaffActor } from '../../apps/api/src/core/actor.ts'
import { AppError } from '../../apps/api/src/core/app-error.ts'
import { type Writer, writerOf } from '../../apps/api/src/core/writer.ts'
import type { Deps } from '../../apps/api/src/deps.ts'
import { appendDraft } from '../../apps/api/src/features/entries/service/append-draft.ts'
import { deliverEntries } from '../../apps/api/src/features/entries/service/deliver-entries.ts'
import { verifyLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import {
  type ProcessMemory,
  startMemory,
} from '../../apps/api/src/features/entries/service/process-memory.ts'
import { getEntriesAfter } from '../../apps/api/src/features/orders/service.ts'
import type { Gained } from '../../apps/web/src/ledger/order.ts'
import { sealOf } from '../../packages/ledger/test-support/one-sensor-job.ts'
import { locationId, shopId } from '../../packages/ledger/test-support/shop.ts'
import { type PersonName, people } from './shop-tables.ts'
import type { Database, Statement } from './simulated-database.ts'
import type { Timers } from './timers.ts'

/** Who sends a request, and from where. */
export type Sender = {
  readonly person: PersonName
  readonly sessionId: string
  readonly deviceId: string | null
}

export type Request =
  | {
      readonly asks: 'append'
      readonly sender: Sender
      readonly entries: readonly DraftEnvelope[]
      readonly sides: readonly SentSide[]
      readonly heard?: Heard
    }
  | { readonly asks: 'gained'; readonly sender: Sender; readonly orderId: string; readonly after: number }
  /** The server composes the report and seals it. `id`: of the entry that says so. */
  | { readonly asks: 'seal'; readonly sender: Sender; readonly orderId: string; readonly id: string }

export type Reply =
  | { readonly says: 'results'; readonly results: readonly AppendResult[] }
  | { readonly says: 'gained'; readonly gained: Gained }
  /** The server answered that it cannot: `code` is the problem's, null where it does not know itself. */
  | { readonly says: 'problem'; readonly code: string | null }
  /** Nobody answered, or something that is not the server. */
  | { readonly says: 'nothing' }

/** A statement on its way to the database. */
export type AskedStatement = Statement & {
  readonly serverNumber: number
  readonly resolve: (result: { readonly rows: readonly unknown[] }) => void
  readonly reject: (error: Error) => void
}

export type ServerProcess = {
  readonly number: number
  readonly memory: ProcessMemory
  readonly isAlive: () => boolean
  readonly handle: (request: Request) => Promise<Reply>
  /** Its memory is gone, and whatever it was about to do. */
  readonly die: () => void
}

export type ServerWorld = {
  readonly database: Database
  readonly timers: Timers
  /** Has a statement run when the simulation chooses. */
  readonly ask: (statement: AskedStatement) => void
  /** Has work done once nothing else can go on. */
  readonly next: (work: () => void) => void
  /** Milliseconds by which this server's clock is ahead. */
  readonly clockAheadMs: number
}

/** Statements that read what nothing here ever changes: they are answered at once. */
const answeredAtOnce: ReadonlySet<string> = new Set(['sides', 'earlier-orders', 'earlier-visits'])

/** One process of the service: its real use cases on a simulated database, clock and turns. */
export const startServer = (number: number, world: ServerWorld): ServerProcess => {
  const { database, timers } = world
  let alive = true
  const isAlive = () => alive
  const query = ({ name, values }: Statement): Promise<{ readonly rows: readonly unknown[] }> =>
    answeredAtOnce.has(name)
      ? Promise.resolve({ rows: database.run({ name, values }) })
      : new Promise((resolve, reject) => {
          world.ask({ name, values, serverNumber: number, resolve, reject })
        })
  const pool = { query } as unknown as Pool
  const memory = startMemory(pool, {
    next: (work) => world.next(() => (alive ? work() : undefined)),
    after: (milliseconds, work) => timers.after(milliseconds, work, isAlive),
  })
  const deps = {
    pool,
    shopId,
    clock: { now: () => new Date(timers.now() + world.clockAheadMs) },
    live: { wrote: () => undefined },
  } as unknown as Deps

  const actorOf = ({ person, sessionId, deviceId }: Sender): StaffActor =>
    mint<StaffActor>({
      who: 'staff',
      kind: deviceId === null ? 'desk' : 'bay',
      shopId,
      sessionId,
      staffId: people[person].id,
      name: person,
      roles: people[person].roles,
      deviceId,
      locationId,
      expiresAt: new Date(8.64e15),
      provenAt: new Date(0),
      awaits: null,
    })

  /** A tablet hands in under its own enrollment, whoever is signed in; its signature is checked before this. */
  const writerFor = (sender: Sender): Writer =>
    sender.deviceId === null
      ? writerOf(actorOf(sender))
      : {
          staffId: people[sender.person].id,
          deviceId: sender.deviceId,
          from: 'bay',
          authority: { by: 'tablet', deviceId: sender.deviceId },
        }

  const seal = async (actor: StaffActor, orderId: string, id: string): Promise<Reply> => {
    const { state } = await verifyLedger(deps, orderId)
    const draft = {
      id,
      shopId,
      orderId,
      kind: 'report.sealed',
      version: versionOf('report.sealed'),
      payload: sealOf({ state: () => state }, state.reports.at(-1)?.reportNumber ?? null),
      restsOn: [],
      writtenBy: { kind: 'staff', staffId: actor.staffId },
      deviceId: null,
      writtenAt: deps.clock.now().toISOString(),
    } as Draft
    const given = { reportNumber: `R-${id.slice(-12)}` }
    const sealed = await appendDraft(deps, draft, { sides: [], given, authority: writerOf(actor).authority })
    if (!sealed.admitted) return { says: 'problem', code: sealed.code }
    const { entry } = sealed
    return { says: 'results', results: [{ result: 'accepted', ...entry }] }
  }

  const answer = async (request: Request): Promise<Reply> => {
    const actor = actorOf(request.sender)
    if (request.asks === 'append') {
      const { sender, asks: _, ...delivered } = request
      return { says: 'results', results: await deliverEntries(deps, writerFor(sender), delivered) }
    }
    if (database.sessions.get(actor.sessionId)?.isOver !== false)
      throw new AppError({ code: 'SESSION_EXPIRED' })
    if (request.asks === 'seal') return seal(actor, request.orderId, request.id)
    return {
      says: 'gained',
      gained: await getEntriesAfter(deps, actor, request.orderId, request.after),
    }
  }

  return {
    number,
    memory,
    isAlive,
    handle: (request) =>
      answer(request).catch(
        (error: unknown): Reply => ({
          says: 'problem',
          code: error instanceof AppError ? error.said.code : unexpected(error),
        }),
      ),
    die: () => {
      alive = false
    },
  }
}

/** The database did not answer: the service says so. Anything else is a fault of the program and ends the run. */
const unexpected = (error: unknown): null => {
  if (error instanceof DatabaseLost) return null
  throw error
}

/** The connection to the database broke, before or after the statement was done. */
export class DatabaseLost extends Error {}
