import { isDeepStrictEqual } from 'node:util'
import type { RecordVersion } from '@bayledger/contract/record'
import type { SecurityEventKind } from '@bayledger/contract/security-events'
import type { Prisma } from '@bayledger/db/generated/client'
import type { RecordSubject } from '@bayledger/wording/problems'
import { v7 as newId } from 'uuid'
import type { Deps } from '../deps.ts'
import type { StaffActor } from './actor.ts'
import { AppError } from './app-error.ts'
import { once } from './once.ts'
import { noteSecurityEvent } from './security-events.ts'
import { staleVersion } from './stale-version.ts'

type Tx = Prisma.TransactionClient

/** A record as it is: what an owner edits, and its version. */
export type Kept<Content> = { readonly id: string; readonly version: number; readonly content: Content }

/** How the rows of one kind of record are read and written; the history is kept around it. */
export type RecordStore<Content> = {
  readonly subject: RecordSubject
  /** Locks the row until the transaction ends; `null`: there is none. */
  readonly lock: (tx: Tx, shopId: string, id: string) => Promise<Kept<Content> | null>
  readonly insert: (tx: Tx, shopId: string, kept: Kept<Content>, at: Date) => Promise<void>
  readonly update: (tx: Tx, shopId: string, kept: Kept<Content>, at: Date) => Promise<void>
}

/** Of a kind of record that comes about elsewhere, as a tablet does by its enrollment. */
export type ChangedStore<Content> = Omit<RecordStore<Content>, 'insert'>

type Who = Pick<StaffActor, 'staffId'>
type Key = { readonly key: string; readonly requestHash: string }

/** Adds a record and the first version of its history, once for a key. */
export const createRecord = <Content extends object>(
  deps: Deps,
  actor: Who,
  key: Key,
  store: RecordStore<Content>,
  content: Content,
): Promise<Kept<Content>> => {
  const { shopId } = deps
  const at = deps.clock.now()
  return once(deps.prisma, { shopId, actor: actor.staffId, ...key, at }, async (tx) => {
    const kept = { id: newId(), version: 1, content }
    await store.insert(tx, shopId, kept, at)
    await keepVersion(tx, shopId, store.subject, kept, { by: actor, at })
    return kept
  })
}

/**
 * Saves a record over the version that was read, with its history, in one transaction. What is as it was stays the version
 * that it is. @throws RECORD_NOT_FOUND, or VERSION_STALE with both contents
 */
export const putRecord = <Content extends object>(
  deps: Deps,
  actor: Who,
  store: ChangedStore<Content>,
  sent: Kept<Content>,
): Promise<Kept<Content>> => deps.prisma.$transaction((tx) => putRecordIn(tx, deps, actor, store, sent))

/** The same within a transaction that does more: an import of many records, or a change that ends sessions as well. */
export const putRecordIn = async <Content extends object>(
  tx: Tx,
  { shopId, clock }: Pick<Deps, 'shopId' | 'clock'>,
  actor: Who,
  store: ChangedStore<Content>,
  sent: Kept<Content>,
): Promise<Kept<Content>> => {
  const at = clock.now()
  const found = await store.lock(tx, shopId, sent.id)
  if (found === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: store.subject })
  if (found.version !== sent.version) throw staleVersion(store.subject, found, sent.content)
  if (isDeepStrictEqual(found.content, sent.content)) return found
  const kept = { ...sent, version: found.version + 1 }
  await keepAsFound(tx, shopId, store.subject, found, at)
  await store.update(tx, shopId, kept, at)
  await keepVersion(tx, shopId, store.subject, kept, { by: actor, at })
  return kept
}

/** Adds one version to the history of a record. `by` `null`: the program. No password or PIN may be in the content. */
export const keepVersion = async (
  tx: Tx,
  shopId: string,
  subject: RecordSubject,
  { id, version, content }: Kept<object>,
  { by, at }: { readonly by: Who | null; readonly at: Date },
): Promise<void> => {
  await tx.recordVersion.create({
    data: {
      shopId,
      subject,
      subjectId: id,
      version,
      body: content as Prisma.InputJsonValue,
      createdBy: by === null ? { kind: 'system' } : { kind: 'staff', staffId: by.staffId },
      createdAt: at,
    },
  })
  const kind = securityKindOf(subject, content)
  if (kind !== null)
    await noteSecurityEvent({ shopId, clock: { now: () => at } }, tx, {
      kind,
      staffId: by?.staffId ?? null,
      aboutId: id,
      details: content as Prisma.InputJsonObject,
    })
}

/** Which changes of records an owner finds among the security events too. */
const securityKindOf = (subject: RecordSubject, content: object): SecurityEventKind | null => {
  switch (subject) {
    case 'person':
      return 'person-changed'
    case 'tablet':
      return 'isOut' in content && content.isOut === true ? 'tablet-put-out' : 'tablet-changed'
    case 'own-data':
      return 'data-copied'
    default:
      return null
  }
}

/** A record that was there before its history was: what it was is kept too, so that it can be read and written again. */
const keepAsFound = async (
  tx: Tx,
  shopId: string,
  subject: RecordSubject,
  { id, version, content }: Kept<object>,
  at: Date,
): Promise<void> => {
  await tx.recordVersion.createMany({
    data: [
      {
        shopId,
        subject,
        subjectId: id,
        version,
        body: content as Prisma.InputJsonValue,
        createdBy: { kind: 'as-found' },
        createdAt: at,
      },
    ],
    skipDuplicates: true,
  })
}

/** The versions of a record with who wrote each, newest first. */
export const listRecordVersions = async (
  prisma: Pick<Tx, 'recordVersion' | 'staff'>,
  shopId: string,
  subject: RecordSubject,
  subjectId: string,
): Promise<RecordVersion[]> => {
  const [rows, people] = await Promise.all([
    prisma.recordVersion.findMany({ where: { shopId, subject, subjectId }, orderBy: { version: 'desc' } }),
    prisma.staff.findMany({ where: { shopId }, select: { id: true, name: true } }),
  ])
  const names = new Map(people.map(({ id, name }) => [id, name]))
  return rows.map((row) => presentVersion(row, names))
}

/** A version as a page's history reads it, of a record or of a setting. */
export const presentVersion = (
  row: {
    readonly version: number
    readonly body: unknown
    readonly createdBy: unknown
    readonly createdAt: Date
  },
  names: ReadonlyMap<string, string>,
): RecordVersion => {
  const { staffId } = row.createdBy as { staffId?: string }
  return {
    version: row.version,
    content: row.body as Record<string, unknown>,
    by: staffId === undefined ? null : (names.get(staffId) ?? null),
    at: row.createdAt.toISOString(),
  }
}
