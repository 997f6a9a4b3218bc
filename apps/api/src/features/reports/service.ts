import { createHash } from 'node:crypto'
import type { ReportCheck, ShopSigningKeys } from '@bayledger/contract/reports'
import type { DraftOfKind, Entry } from '@bayledger/ledger/entry'
import { sealGate } from '@bayledger/ledger/questions/gates'
import { versionOf } from '@bayledger/ledger/registry'
import type { ReportContext } from '@bayledger/report/compose-content'
import { fingerprintOf } from '@bayledger/report/signing-fault'
import { english } from '@bayledger/wording/en/english'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { findBlobBytes, storeBlob } from '../../core/blobs.ts'
import type { Deps, Parts, SigningIdentity } from '../../deps.ts'
import { stampOf } from '../../stamping/stamp-of.ts'
import { appendDraft } from '../entries/service/append-draft.ts'
import { verifyLedger } from '../entries/service/load-ledger.ts'
import { refuseDoubted } from '../entries/service/read-only-orders.ts'
import { getLedger } from '../orders/service.ts'
import { claimedNumber, reportNumber, templateVersion } from './policy.ts'
import { loadContext } from './service/load-context.ts'
import { saysTheSame } from './service/says-the-same.ts'
import { sealStamped } from './service/seal-stamped.ts'
import { sealTaskOf } from './service/seal-task.ts'
import * as store from './store.ts'

/** An order that is written to this often while it is being sealed is not finished. */
const mostTries = 5

export type SealRequest = { readonly orderId: string; readonly entryId: string; readonly staffId: string }

/**
 * Composes the report of everything written so far, seals it, stores the bytes and only then enters it; if
 * something was written meanwhile, it composes again. The same entry id again gives the same report.
 */
export const sealOrderReport = async (
  deps: Deps,
  request: SealRequest,
): Promise<store.StoredReport & { seq: number; byteLength: number }> => {
  for (let attempt = 0; attempt < mostTries; attempt += 1) {
    const done = await sealHead(deps, request)
    if (done !== 'head-moved') return done
  }
  throw new AppError({ code: 'REPORT_NOT_DUE', why: 'order-is-written-to' })
}

const sealHead = async (deps: Deps, { orderId, entryId, staffId }: SealRequest) => {
  await getLedger(deps, orderId)
  const ledger = await verifyLedger(deps, orderId)
  refuseDoubted(ledger)
  const { state, entries } = ledger
  const reports = await store.listReportsOf(deps.pool, deps.shopId, orderId)
  const earlier = reports.find((report) => report.entryId === entryId)
  if (earlier) return describe(deps, earlier, entries.find(({ id }) => id === entryId)?.seq ?? 0)
  const [closed] = sealGate(state)
  if (closed)
    throw new AppError({ code: 'REPORT_NOT_DUE', why: 'gate', gate: closed }, { reason: closed.code })
  const now = deps.clock.now()
  const at = now.toISOString()
  const number = reportNumber(state.opened?.orderNumber ?? '', reports.length)
  const supersedes = reports.at(-1)?.number ?? null
  const signing = await deps.signing()
  const { context, settingsVersion } = await loadContext(deps, ledger, {
    number,
    composedAt: at,
    supersedes,
    sealKey: fingerprintOf(signing.certificatePem),
  })
  const before = reports.at(-1)
  if (before !== undefined) await refuseSame(deps, ledger.entries, before, { signing, context })
  const bytes = await sealStamped(deps, (stamp) => sealTaskOf(state, signing, { ...context, stamp }))
  const sha256 = digestOf(bytes)
  await storeBlob(deps.pool, deps.shopId, { sha256, mediaType: 'application/pdf', bytes, at: now })
  const draft: DraftOfKind<'report.sealed'> = {
    id: entryId,
    shopId: deps.shopId,
    orderId,
    kind: 'report.sealed',
    version: versionOf('report.sealed'),
    payload: {
      composedFrom: { seq: state.seq, hash: state.headHash },
      pdfSha256: sha256,
      templateVersion,
      settingsVersion,
      language: context.language.code,
      supersedes,
    },
    restsOn: [],
    writtenBy: { kind: 'staff', staffId },
    deviceId: null,
    writtenAt: at,
  }
  const appended = await appendDraft(deps, draft, { sides: [], given: { reportNumber: number } })
  if (appended.admitted)
    return describe(
      deps,
      { number, orderId, entryId, sha256, sealedAt: new Date(appended.entry.receivedAt) },
      appended.entry.seq,
    )
  if (appended.code === 'REPORT_HEAD_MOVED') return 'head-moved'
  throw new AppError({ code: 'ENTRY_REFUSED', why: 'ledger', refusal: appended }, { reason: appended.code })
}

/** An addendum has something to say that the report before it does not. @throws REPORT_NOT_DUE */
const refuseSame = async (
  deps: Deps,
  entries: readonly Entry[],
  report: store.StoredReport,
  { signing, context }: { signing: SigningIdentity; context: Omit<ReportContext, 'stamp'> },
): Promise<void> => {
  const bytes = await findBlobBytes(deps.pool, deps.shopId, report.sha256)
  if (bytes && (await saysTheSame({ signing, stamping: deps.stamping }, entries, { report, bytes }, context)))
    throw new AppError({ code: 'REPORT_NOT_DUE', why: 'says-the-same', number: report.number })
}

const describe = async (deps: Deps, report: store.StoredReport, seq: number) => {
  const bytes = await findBlobBytes(deps.pool, deps.shopId, report.sha256)
  return { ...report, seq, byteLength: bytes?.length ?? 0 }
}

/**
 * A report's file. What is kept of a person who was erased, because the law keeps it, is for an owner alone.
 * @throws REPORT_NOT_FOUND, ACCESS_REFUSED
 */
export const getReportBytes = async (
  deps: Deps,
  actor: Pick<StaffActor, 'roles'>,
  orderId: string,
  number: string,
): Promise<Uint8Array> => {
  const report = await store.findReport(deps.pool, deps.shopId, number)
  const bytes =
    report?.orderId === orderId ? await findBlobBytes(deps.pool, deps.shopId, report.sha256) : null
  if (!bytes) throw notFound()
  if (!actor.roles.includes('owner') && (await store.isOfErasedPerson(deps.pool, deps.shopId, orderId)))
    throw new AppError({ code: 'ACCESS_REFUSED', needs: ['owner'] })
  return bytes
}

export const getNewestReportBytes = async (
  deps: Deps,
  orderId: string,
): Promise<{ bytes: Uint8Array; number: string }> => {
  const report = (await store.listReportsOf(deps.pool, deps.shopId, orderId)).at(-1)
  const bytes = report ? await findBlobBytes(deps.pool, deps.shopId, report.sha256) : null
  if (!report || !bytes) throw notFound()
  return { bytes, number: report.number }
}

/** Is this a report of ours, byte for byte? A single changed or added byte makes another digest. */
export const checkReport = async (
  { pool, stamping }: Parts,
  given: { readonly sha256: string } | Uint8Array,
): Promise<ReportCheck> => {
  const sha256 = given instanceof Uint8Array ? digestOf(given) : given.sha256
  const genuine = await store.findReportAnywhere(pool, { sha256 })
  if (genuine) {
    const newest = (await store.listReportsOf(pool, genuine.shopId, genuine.orderId)).at(-1)
    const supersededBy = newest && newest.number !== genuine.number ? newest.number : null
    const bytes =
      given instanceof Uint8Array ? given : await findBlobBytes(pool, genuine.shopId, genuine.sha256)
    return {
      verdict: 'genuine',
      words: english.reports.checked({ verdict: 'genuine', number: genuine.number, supersededBy }),
      number: genuine.number,
      sealedAt: genuine.sealedAt.toISOString(),
      supersededBy,
      stamp: bytes && (await stampOf({ pool, stamping }, genuine, bytes)),
    }
  }
  // Said of every file that claims a number, so that nobody learns which numbers there are.
  const claimed = given instanceof Uint8Array ? claimedNumber(given) : null
  if (claimed !== null)
    return {
      verdict: 'changed',
      words: english.reports.checked({ verdict: 'changed', number: claimed }),
      number: claimed,
      sealedAt: null,
      supersededBy: null,
      stamp: null,
    }
  return {
    verdict: 'unknown',
    words: english.reports.checked({ verdict: 'unknown' }),
    number: null,
    sealedAt: null,
    supersededBy: null,
    stamp: null,
  }
}

/** The keys that the shops of this service have sealed with, the newest of each first. */
export const listSigningKeys = async ({ pool }: Parts): Promise<ShopSigningKeys[]> => {
  const keys = await store.listSigningKeys(pool)
  return [...Map.groupBy(keys, ({ shop }) => shop)].map(([shop, ofShop]) => ({
    shop,
    keys: ofShop.map(({ fingerprint, since }) => ({ fingerprint, since: since.toISOString() })),
  }))
}

const digestOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

const notFound = () => new AppError({ code: 'REPORT_NOT_FOUND' })
