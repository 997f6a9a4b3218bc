import type { Erasure, ErasurePreview } from '@bayledger/contract/erasures'
import { moneySidesOf, neverPaidCents } from '@bayledger/ledger/questions/money'
import { v7 as newId } from 'uuid'
import { AppError } from '../../core/app-error.ts'
import { findRetention, yearsAfter } from '../../core/retention-times.ts'
import { listSameRecords } from '../../core/same-records.ts'
import { noteSecurityEvent } from '../../core/security-events.ts'
import type { Deps } from '../../deps.ts'
import { writeErasureNote } from '../../proof/erasure-notes.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { getLedger } from '../orders/service.ts'
import { obstaclesOf, reportsByTime } from './policy.ts'
import { presentErasure } from './present.ts'
import * as store from './store.ts'

/** The surviving card of a person with all that the question of erasing them needs. @throws CUSTOMER_NOT_FOUND */
const readPerson = async (deps: Deps, tx: store.Tx, customerId: string) => {
  const { shopId } = deps
  const records = await listSameRecords(tx, shopId, 'customer', customerId)
  const [own] = records
  if (own === undefined) throw new AppError({ code: 'CUSTOMER_NOT_FOUND' })
  const card = await tx.customer.findUniqueOrThrow({ where: { shopId_id: { shopId, id: own } } })
  const orders = await store.listOrders(tx, shopId, own)
  const orderIds = orders.map(({ orderId }) => orderId)
  const { reportYears } = await findRetention(tx, shopId)
  const reports = reportsByTime(
    await store.listSealedReports(tx, shopId, orderIds),
    (sealedAt) => yearsAfter(sealedAt, reportYears),
    deps.clock.now(),
  )
  return { customerId: own, erasedAt: card.erasedAt, records, orders, orderIds, reports }
}

type Person = Awaited<ReturnType<typeof readPerson>>

const readObstacles = async (deps: Deps, { records, orders, orderIds }: Person) => {
  const { prisma, shopId } = deps
  const owed = []
  for (const { orderId } of orders) {
    const { entries, state } = await getLedger(deps, orderId)
    const money = moneySidesOf(entries, await sidesOf(deps, entries, new Set(['money'])))
    const cents = neverPaidCents(state, money)
    if (cents !== null && cents !== 0) owed.push({ orderId, cents })
  }
  return obstaclesOf({
    orders,
    owed,
    holding: await store.listHolding(prisma, shopId, [...records, ...orderIds]),
    onTablets: await store.listTabletsWith(prisma, shopId, orderIds),
  })
}

/** What an erasure would take, what stays and what is in the way of it. @throws CUSTOMER_NOT_FOUND */
export const previewErasure = async (deps: Deps, customerId: string): Promise<ErasurePreview> => {
  const { prisma, shopId } = deps
  const person = await readPerson(deps, prisma, customerId)
  const { erasedAt, orders, reports } = person
  return {
    erasedAt: erasedAt?.toISOString() ?? null,
    goes: await store.countPerson(
      prisma,
      shopId,
      person.customerId,
      reports.due.map(({ sha256 }) => sha256),
    ),
    stays: {
      orders: orders.length,
      entries: orders.reduce((sum, { entries }) => sum + entries, 0),
      reports: reports.kept.map(({ number, until }) => ({ number, until: until.toISOString() })),
    },
    obstacles: erasedAt === null ? await readObstacles(deps, person) : [],
  }
}

export type Erasing = {
  /** A `KeptReason`; of a note, as it was written. */
  readonly reason: string
  readonly identity: string | null
  /** The id of whoever erases; `null`: the program by itself. */
  readonly by: string | null
}

/** Erases a person unless something is in the way. @throws CUSTOMER_NOT_FOUND, ERASURE_REFUSED with all that is in the way */
export const erasePerson = async (
  deps: Deps,
  customerId: string,
  erasing: Erasing,
): Promise<ErasurePreview> => {
  const person = await readPerson(deps, deps.prisma, customerId)
  if (person.erasedAt === null) {
    const obstacles = await readObstacles(deps, person)
    if (obstacles.length > 0) throw new AppError({ code: 'ERASURE_REFUSED', obstacles })
    await eraseAtOnce(deps, customerId, { ...erasing, erasureId: newId() })
  }
  return previewErasure(deps, customerId)
}

/**
 * Erases what is there now, in one transaction. The note outside the database is written before its end: whatever breaks off in
 * between, the next start finds the note and ends the erasure. Only the database's own conditions are in the way here.
 */
export const eraseAtOnce = async (
  deps: Deps,
  customerId: string,
  { erasureId, reason, identity, by }: Erasing & { readonly erasureId: string },
): Promise<void> => {
  const { shopId } = deps
  const at = deps.clock.now()
  await deps.prisma
    .$transaction(
      async (tx) => {
        const person = await readPerson(deps, tx, customerId)
        const counts = await store.erasePerson(tx, shopId, {
          ...{ erasureId, customerId: person.customerId, reason, identity, at },
          reports: person.reports.due.map(({ sha256 }) => sha256),
          by: by === null ? { kind: 'system' } : { kind: 'staff', staffId: by },
        })
        if (counts.cards === 0) return
        await noteSecurityEvent(deps, tx, { kind: 'person-erased', staffId: by, aboutId: person.customerId })
        writeErasureNote(deps.digestPlaces, {
          ...{ format: 1, shopId, erasureId, customerId: person.customerId },
          ...{ at: at.toISOString(), reason, identity, by },
        })
      },
      { timeout: 60_000 },
    )
    .catch(refuseInWords)
}

/** What the database refuses was placed or opened after the person was looked at. */
const refuseInWords = (error: unknown): never => {
  const words = String(error instanceof Error ? `${error.message} ${JSON.stringify(error)}` : error)
  if (words.includes('BL001') || words.includes('BL002'))
    throw new AppError({ code: 'ERASURE_REFUSED', obstacles: [] })
  throw error
}

/** Erasures, newest first, without the people. */
export const listErasures = async ({ prisma, shopId }: Deps): Promise<Erasure[]> => {
  const rows = await store.listErasures(prisma, shopId)
  const names = new Map((await store.listNames(prisma, shopId)).map(({ id, name }) => [id, name]))
  return rows.map((row) => presentErasure(row, names))
}
