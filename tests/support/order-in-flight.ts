import { randomUUID } from 'node:crypto'
import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { digestOf } from '@bayledger/ledger/digests'
import type { Draft } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import type { Step } from '@bayledger/reckoning/step'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { v7 as newId } from 'uuid'
import { noCarriers } from '../../apps/api/src/carriers/carrier.ts'
import { forShop, type Parts } from '../../apps/api/src/deps.ts'
import { loadLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import { startLiveHub } from '../../apps/api/src/http/live.ts'
import { passingSealingKey } from '../../apps/api/src/sealing-key.ts'
import { noStamping } from '../../apps/api/src/stamping/stamping.ts'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import type { DemoPerson } from '../../prisma/seeds/demo/people.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { appendLine } from './append-line.ts'
import { ownDigestPlaces } from './digest-places.ts'
import { freeVehicles } from './free-vehicles.ts'
import { freshCopy } from './fresh-copy.ts'
import { noBackups } from './no-backups.ts'
import { alwaysSealsWith } from './seals-with.ts'
import { closeNext } from './work-on.ts'

export type OrderWriter = {
  readonly parts: Parts
  /**
   * Writes a demo order once more, up to the first entry that `stop` names, or whole; gives the new order's id. It gets the next
   * number and, with `plate`, another vehicle on file.
   */
  readonly write: (
    order: { readonly number: string; readonly plate?: string },
    stop: (line: DemoLine) => boolean,
  ) => Promise<string>
  /** Writes what is left of an order that was stopped. */
  readonly finish: (orderId: string) => Promise<void>
  /**
   * Closes the steps that are open, one after the other, before the first that `until` names: as whoever wrote the order's last
   * entry would, soon after it, or as `technician`, now.
   */
  readonly workOn: (orderId: string, until: (step: Step) => boolean, technician?: Technician) => Promise<void>
  readonly close: () => Promise<void>
}

/** Who works, and on which tablet; its clock is so much behind. */
type Technician = {
  readonly person: DemoPerson
  readonly deviceId: string
  readonly minutesBehind: number
}

/** A step is closed so long after the one before. */
const stepMilliseconds = 5_000

/** Writes orders on the database of a running service, as another process of the shop would. */
export const openOrderWriter = async (serviceUrl: string): Promise<OrderWriter> => {
  const pool = openPool({ url: serviceUrl, size: 2, onIdleError: () => undefined })
  const live = await startLiveHub(serviceUrl, () => undefined)
  const demo = demoShop(new Date().toISOString())
  const signing = await createSigningIdentity({
    commonName: randomUUID(),
    notBefore: new Date().toISOString(),
    days: 1,
  })
  const parts: Parts = {
    pool,
    prisma: openClient(pool),
    clock: { now: () => new Date() },
    tls: false,
    publicAddress: 'http://localhost',
    signing: alwaysSealsWith(signing),
    sealing: await passingSealingKey(),
    live,
    carriers: noCarriers,
    stamping: noStamping,
    backups: () => noBackups,
    loading: new Set(),
    digestPlaces: ownDigestPlaces(),
  }
  const left = new Map<string, readonly DemoLine[]>()
  const written = new Map<string, DemoLine>()
  const append = async (line: DemoLine): Promise<void> => {
    await appendLine(parts, demo.shop.id, line)
    written.set(line.draft.orderId, line)
  }
  /** As whoever wrote the order's last entry here, soon after it. */
  const writtenAfter = (orderId: string) => {
    const last = written.get(orderId)
    if (last === undefined) throw new Error(`order ${orderId} was not written here`)
    const { writtenBy, deviceId } = last.draft
    const receivedAt = new Date(Date.parse(last.receivedAt) + stepMilliseconds).toISOString()
    return { writtenBy, deviceId, writtenAt: receivedAt, receivedAt }
  }
  return {
    parts,
    write: async ({ number, plate }, stop) => {
      const { orderId, lines: copied } = freshCopy(demo, number)
      const other = plate === undefined ? {} : vehicleOf(demo, plate)
      const lines = plate === undefined ? copied : withSensorsOf(plate, copied)
      const stopsAt = lines.findIndex(stop)
      const end = stopsAt < 0 ? lines.length : stopsAt
      for (const line of lines.slice(0, end))
        await append(
          line.draft.kind === 'order.opened'
            ? { ...line, draft: { ...line.draft, payload: { ...line.draft.payload, ...other } } }
            : line,
        )
      left.set(orderId, lines.slice(end))
      return orderId
    },
    finish: async (orderId) => {
      for (const line of left.get(orderId) ?? []) await append(line)
    },
    workOn: async (orderId, until, technician) => {
      for (;;) {
        const { state } = await loadLedger(forShop(parts, demo.shop.id), orderId)
        const closing = closeNext(demo, state, until)
        if (closing === null) return
        const envelope = technician ? writtenNow(technician) : writtenAfter(orderId)
        const own = {
          id: newId(),
          shopId: demo.shop.id,
          orderId,
          restsOn: [],
          version: versionOf(closing.kind),
        }
        const { receivedAt, ...author } = envelope
        await append({ draft: { ...own, ...author, ...closing } as Draft, sides: [], given: {}, receivedAt })
      }
    },
    close: async () => {
      await live.close()
      await parts.prisma.$disconnect()
      await pool.end()
    },
  }
}

const writtenNow = ({ person, deviceId, minutesBehind }: Technician) => ({
  writtenBy: { kind: 'staff', staffId: person.id },
  deviceId,
  writtenAt: new Date(Date.now() - minutesBehind * 60_000).toISOString(),
  receivedAt: new Date().toISOString(),
})

const vehicleOf = (demo: ReturnType<typeof demoShop>, plate: string) => {
  const onFile = [...demo.vehicles, ...freeVehicles.map(({ visitor }) => visitor.vehicle)]
  const vehicle = onFile.find((one) => one.plate === plate)
  if (!vehicle) throw new Error(`no vehicle ${plate} is on file`)
  return { vehicleId: vehicle.id, customerId: vehicle.customerId }
}

/** Sensors that were heard on the demo's own vehicle are in no other one: this vehicle's have IDs that begin like its plate ends. */
const withSensorsOf = (plate: string, lines: readonly DemoLine[]): readonly DemoLine[] => {
  const text = JSON.stringify(lines).replace(/(?<=")[0-9A-F]{8}(?=")/g, (id) => sensorOn(plate, id))
  return (JSON.parse(text) as DemoLine[]).map((line) => {
    const { draft } = line
    if (draft.kind !== 'diagnosis.issued') return line
    const evidenceDigest = digestOf(draft.payload.evidence)
    return { ...line, draft: { ...draft, payload: { ...draft.payload, evidenceDigest } } }
  })
}

/** The ID of a demo sensor in a copy of its order for another vehicle, so that no ID is known of two. */
export const sensorOn = (plate: string, id: string): string => `${plate.slice(-2)}${id.slice(2)}`

/**
 * The same for one order, of a vehicle that was never here before. Where `workUntil` is given, the whole order is written
 * and worked on.
 */
export const writeOrderInFlight = async (
  serviceUrl: string,
  order: { readonly number: string; readonly plate: string },
  stop: (line: DemoLine) => boolean,
  workUntil?: (step: Step) => boolean,
): Promise<string> => {
  const writer = await openOrderWriter(serviceUrl)
  try {
    const orderId = await writer.write(order, stop)
    if (workUntil !== undefined) await writer.workOn(orderId, workUntil)
    return orderId
  } finally {
    await writer.close()
  }
}
