import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { AppendResult, RefusedEntry, SentEntry, SentSide } from '@bayledger/contract/entries'
import { openPool } from '@bayledger/db/pool'
import { type Kind, type PayloadOf, versionOf } from '@bayledger/ledger/registry'
import { noteLoaded } from '../../../apps/api/src/demo-loaded.ts'
import { forShop } from '../../../apps/api/src/deps.ts'
import { faultLine } from '../../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../../apps/api/src/proof/verify-database.ts'
import type { DemoLine } from '../../../prisma/seeds/demo/order-pen.ts'
import { demoShop } from '../../../prisma/seeds/demo-shop.ts'
import { openOrderWriter } from '../../support/order-in-flight.ts'
import { sideOf } from '../../support/write-entry.ts'
import { openDesk } from './desk.ts'
import { type ServiceProcess, serviceProcess } from './service-process.ts'

export type FaultOrder = { readonly orderId: string; readonly stage: 'arrival' | 'work' }

/** A shop whose tablets are put to the test: its service may be killed, and its desk asks the service itself, past any weather. */
export type FaultShop = {
  readonly service: ServiceProcess
  /** Five orders in the bay: four at their arrival check, one at work. */
  readonly openFive: () => Promise<readonly FaultOrder[]>
  /** An order at work of which all is done but the last look at the warning light. */
  readonly openAlmostDone: () => Promise<FaultOrder>
  /** Somebody else takes that look; then the report is sealed and the vehicle handed back. */
  readonly handBack: (order: FaultOrder) => Promise<void>
  /** Withdraws orders, so that the list of vehicles does not grow with every round; one that is under way stays. */
  readonly putAway: (orders: readonly FaultOrder[]) => Promise<void>
  readonly enrollmentCode: () => Promise<string>
  readonly entriesOf: (orderId: string) => Promise<readonly SentEntry[]>
  /** What was refused and nobody has settled. */
  readonly tray: () => Promise<readonly RefusedEntry[]>
  /** What `ledger:verify` finds, one line a fault. */
  readonly verify: () => Promise<readonly string[]>
  readonly stop: () => Promise<void>
}

const atArrival = ['T-2602', 'T-2604', 'T-2609', 'T-2610']
const atWork = 'T-2603'
const almostDone = 'T-2601'
const isLastLook = ({ draft }: DemoLine): boolean =>
  draft.kind === 'telltale.observed' && draft.payload.phase === 'closing'

/** On a migrated database with the demo shop in it, without orders, and built faces. */
export const startFaultShop = async (database: {
  readonly ownerUrl: string
  readonly serviceUrl: string
}): Promise<FaultShop> => {
  const data = mkdtempSync(join(tmpdir(), 'bayledger-faults-shop-'))
  const writer = await openOrderWriter(database.serviceUrl)
  const demo = demoShop(new Date().toISOString())
  await noteLoaded(forShop(writer.parts, demo.shop.id))
  const service = await serviceProcess({
    DATABASE_URL: database.serviceUrl,
    DATABASE_OWNER_URL: database.ownerUrl,
    DATA_FOLDER: data,
  })
  await service.start()
  const verifying = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })

  const desk = openDesk(service.port)
  const ask = async <T>(method: string, path: string, body?: object): Promise<T> =>
    (await desk(method, path, body)) as T

  const append = async <K extends Kind>(
    orderId: string,
    kind: K,
    payload: PayloadOf<K>,
    sides: readonly SentSide[] = [],
  ): Promise<AppendResult[]> => {
    const id = crypto.randomUUID()
    const writtenAt = new Date().toISOString()
    const entry = { id, orderId, kind, version: versionOf(kind), payload, writtenAt, restsOn: [] }
    const sent = { entries: [entry], sides }
    return (await ask<{ results: AppendResult[] }>('POST', '/api/entries', sent)).results
  }

  return {
    service,
    openFive: async () => {
      const opened: FaultOrder[] = []
      for (const number of atArrival)
        opened.push({
          orderId: await writer.write({ number }, ({ draft }) => draft.kind === 'surroundings.recorded'),
          stage: 'arrival',
        })
      const orderId = await writer.write({ number: atWork }, ({ draft }) => draft.kind === 'part.drawn')
      return [...opened, { orderId, stage: 'work' }]
    },
    openAlmostDone: async () => ({
      orderId: await writer.write({ number: almostDone }, isLastLook),
      stage: 'work',
    }),
    handBack: async ({ orderId }) => {
      await writer.finish(orderId)
      await ask('POST', `/api/orders/${orderId}/reports`, { entryId: crypto.randomUUID() })
      const [{ result } = { result: 'nothing' }] = await append(orderId, 'order.handed_back', {
        odometer: null,
        lockingKeyReturned: null,
        retorqueAdvised: false,
        signature: null,
        releaseAgreedBy: null,
        odometerConfirmed: false,
      })
      if (result !== 'accepted') throw new Error(`the hand-back is ${result}`)
    },
    putAway: async (orders) => {
      const words = sideOf('Opened for a test.')
      for (const { orderId } of orders)
        await append(orderId, 'order.withdrawn', { reason: 'opened-twice', words: words.digest }, [words])
    },
    enrollmentCode: async () =>
      (await ask<{ code: string }>('POST', '/api/enrollment-codes', { locationId: demo.home.id })).code,
    entriesOf: async (orderId) =>
      (await ask<{ entries: SentEntry[] }>('GET', `/api/orders/${orderId}`)).entries,
    tray: async () => (await ask<{ refused: RefusedEntry[] }>('GET', '/api/refused-entries')).refused,
    verify: async () => {
      const places = { dataFolder: data, digestFolder: join(data, 'digests') }
      return (await verifyDatabase(verifying, places, () => undefined)).faults.map(faultLine)
    },
    stop: async () => {
      await service.stop()
      await verifying.end()
      await writer.close()
      rmSync(data, { recursive: true, force: true })
    },
  }
}
