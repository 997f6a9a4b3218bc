import type { Merge } from '@bayledger/contract/merges'
import type { Prisma } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import * as z from 'zod/mini'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { listSameRecords } from '../../core/same-records.ts'
import { recordMerged, staleVersion } from '../../core/stale-version.ts'
import type { Deps } from '../../deps.ts'
import { type Fields, givenBack, type MergeSubject, mayUndo } from './policy.ts'
import { presentMerge } from './present.ts'
import * as store from './store.ts'

type Asked = {
  readonly subject: MergeSubject
  readonly survivorId: string
  readonly version: number
  readonly mergedId: string
  readonly mergedVersion: number
  /** The fields of which the other record's value is kept. */
  readonly take: readonly string[]
}

const StoredFields = z.record(z.string(), z.union([z.string(), z.boolean(), z.null()]))

/**
 * Makes two records one. What names the other one goes on naming it and is read as the survivor's: orders, vehicles, consents
 * and messages need no change, and undoing gives back what was there.
 * @throws RECORD_MERGED, VERSION_STALE, MERGE_REFUSED
 */
export const merge = async (deps: Deps, actor: StaffActor, asked: Asked): Promise<Merge> => {
  const { subject, survivorId, mergedId, take } = asked
  if (survivorId === mergedId)
    throw new AppError({ code: 'MERGE_REFUSED', why: 'same-record', what: subject })
  const { prisma, shopId, clock } = deps
  const [at, id] = [clock.now(), newId()]
  return prisma.$transaction(async (tx) => {
    await store.lockRecords(tx, shopId, subject, [survivorId, mergedId])
    const survivor = await findUnmerged(tx, shopId, subject, survivorId)
    const merged = await findUnmerged(tx, shopId, subject, mergedId)
    // Whoever is erased has no other record: what is made one with it would be erased too.
    if (survivor.isErased || merged.isErased) throw new AppError({ code: 'CUSTOMER_ERASED' })
    if (survivor.version !== asked.version) throw staleVersion(subject, survivor.fields, null)
    if (merged.version !== asked.mergedVersion) throw staleVersion(subject, merged.fields, null)
    const changed = take.filter((field) => survivor.fields[field] !== merged.fields[field])
    const of = (fields: Fields) => Object.fromEntries(changed.map((field) => [field, fields[field] ?? null]))
    const [before, after] = [of(survivor.fields), of(merged.fields)]
    await store.updateRecord(tx, shopId, subject, mergedId, { survivorId }, at)
    await store.moveMerged(tx, shopId, subject, mergedId, survivorId)
    await store.updateRecord(tx, shopId, subject, survivorId, after, at)
    const made = { id, subject, mergedId, survivorId, before, after, madeBy: actor.staffId, madeAt: at }
    await store.insertMerge(tx, { shopId, ...made })
    return readMerge(tx, shopId, id)
  })
}

const findRecord = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  subject: MergeSubject,
  id: string,
) => {
  const found = await store.findRecord(tx, shopId, subject, id)
  if (found) return found
  throw notFound(subject)
}

const findUnmerged = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  subject: MergeSubject,
  id: string,
) => {
  const found = await findRecord(tx, shopId, subject, id)
  if (found.survivorId === null) return found
  const names = await store.listNames(tx, shopId, subject, [found.survivorId])
  throw recordMerged(subject, names.get(found.survivorId) ?? '', null, null)
}

/**
 * Takes two records apart: each field that the merge changed and nobody has changed since is as before, and everything that
 * names the merged record is its own again. What was written for the survivor meanwhile stays the survivor's.
 * @throws MERGE_REFUSED, MERGE_NOT_FOUND
 */
export const undoMerge = async (deps: Deps, actor: StaffActor, mergeId: string): Promise<Merge> => {
  const { prisma, shopId, clock } = deps
  const at = clock.now()
  return prisma.$transaction(async (tx) => {
    const { subject, survivorId, mergedId } = await findMerge(tx, shopId, mergeId)
    await store.lockRecords(tx, shopId, subject, [survivorId, mergedId])
    const row = await findMerge(tx, shopId, mergeId)
    if (row.undoneAt !== null)
      throw new AppError({ code: 'MERGE_REFUSED', why: 'undone-before', what: subject })
    if (!mayUndo(row, await store.listMerges(tx, shopId, subject, [survivorId])))
      throw new AppError({ code: 'MERGE_REFUSED', why: 'newer-merge', what: subject })
    const { fields } = await findRecord(tx, shopId, subject, survivorId)
    const [before, after] = [StoredFields.parse(row.before), StoredFields.parse(row.after)]
    await store.updateRecord(tx, shopId, subject, survivorId, givenBack(fields, before, after), at)
    await store.updateRecord(tx, shopId, subject, mergedId, { survivorId: null }, at)
    await store.markUndone(tx, shopId, mergeId, { undoneBy: actor.staffId, undoneAt: at })
    await store.giveBackMerged(tx, shopId, subject, mergedId)
    return readMerge(tx, shopId, mergeId)
  })
}

const findMerge = async (tx: Prisma.TransactionClient, shopId: string, mergeId: string) => {
  const row = await store.findMerge(tx, shopId, mergeId)
  if (!row || !store.isSubject(row.subject)) throw new AppError({ code: 'MERGE_NOT_FOUND' })
  return { ...row, subject: row.subject }
}

const readMerge = async (tx: Prisma.TransactionClient, shopId: string, mergeId: string): Promise<Merge> => {
  const { subject, ...row } = await findMerge(tx, shopId, mergeId)
  const ids = [row.survivorId, row.mergedId]
  const all = await store.listMerges(tx, shopId, subject, ids)
  return presentMerge({ ...row, subject }, all, await store.listNames(tx, shopId, subject, ids))
}

const notFound = (subject: MergeSubject): AppError =>
  new AppError({ code: subject === 'customer' ? 'CUSTOMER_NOT_FOUND' : 'VEHICLE_NOT_FOUND' })

/** The history of a record: every merge that it or a record merged into it took part in, newest first. */
export const listMerges = async (deps: Deps, subject: MergeSubject, id: string): Promise<Merge[]> =>
  deps.prisma.$transaction(async (tx) => {
    const ids = await listSameRecords(tx, deps.shopId, subject, id)
    if (ids.length === 0) throw notFound(subject)
    const all = await store.listMerges(tx, deps.shopId, subject, ids)
    const named = all.flatMap(({ mergedId, survivorId }) => [mergedId, survivorId])
    const names = await store.listNames(tx, deps.shopId, subject, named)
    return all.map((row) => presentMerge(row, all, names))
  })
