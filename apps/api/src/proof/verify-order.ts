import { createHash } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/digests'
import type { Entry } from '@bayledger/ledger/entry'
import { type ChainFault, verifyChain } from '@bayledger/ledger/hash-chain'
import { isKind, versionOf } from '@bayledger/ledger/registry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import type { Pool } from 'pg'
import { findBlobBytes } from '../core/blobs.ts'
import { listEntriesAfter } from '../features/entries/store/read-ledger.ts'
import { verifyPhotos } from './fault-of-photos.ts'
import { faultOfProjections } from './fault-of-projections.ts'
import { faultOfSecondPersons } from './fault-of-second-persons.ts'
import { faultOfSheets } from './fault-of-sheets.ts'
import type { Fault } from './finding.ts'
import { findHead, listErased, listReportRows, listStoredSides, type StoredHead } from './read-proof.ts'
import { type StampJudge, type StampSeen, verifyStamp } from './verify-stamp.ts'

export type VerifiedOrder = {
  readonly entries: readonly Entry[]
  readonly reports: number
  readonly photos: number
  /** Photos whose bytes have not arrived. */
  readonly awaited: number
  /** The time-stamps of its reports, as far as they hold. */
  readonly stamps: readonly StampSeen[]
  /** The first thing that does not hold; `null`: everything does. */
  readonly fault: Fault | null
}

/**
 * Reads one order again and compares everything with its entries: the chain, the head, the sides, the
 * second persons, the sealed files, the photos, the projections. Stops at the first thing that does not hold.
 */
export const verifyOrder = async (
  pool: Pool,
  shopId: string,
  { orderId, number }: { readonly orderId: string; readonly number: string },
  judge: StampJudge,
): Promise<VerifiedOrder> => {
  const entries = await listEntriesAfter(pool, shopId, orderId, 0)
  const head = await findHead(pool, shopId, orderId)
  const reports = entries.filter(({ kind }) => kind === 'report.sealed').length
  const at = (seq: number, what: string): Fault => {
    const entry = entries.find((candidate) => candidate.seq === seq)
    return { where: `Order ${number}, entry ${seq}${entry ? ` (${entry.kind})` : ''}`, what }
  }
  const stamps: StampSeen[] = []
  const order = { pool, shopId, orderId, number, entries, at, judge, stamps }
  const photos = await verifyPhotos(pool, shopId, entries)
  const fault =
    faultOfChain(order) ??
    faultOfHead(order, head) ??
    (await faultOfSides(order)) ??
    (await faultOfAgreement(order)) ??
    (await faultOfReports(order)) ??
    (photos.fault && at(photos.fault.seq, photos.fault.what)) ??
    (head && (await faultOfProjections(order, head)))
  return {
    entries,
    reports,
    photos: entries.filter(({ kind }) => kind === 'photo.attached').length,
    awaited: photos.awaited,
    stamps,
    fault,
  }
}

type Order = {
  readonly pool: Pool
  readonly shopId: string
  readonly orderId: string
  readonly number: string
  readonly entries: readonly Entry[]
  readonly at: (seq: number, what: string) => Fault
  readonly judge: StampJudge
  /** Filled as reports are looked at. */
  readonly stamps: StampSeen[]
}

const faultOfChain = ({ entries, number, at }: Order): Fault | null => {
  if (entries.length === 0) return { where: `Order ${number}`, what: 'it has a head and no entries' }
  const chain = verifyChain(entries)
  if (!chain.whole) return at(chain.brokenAtSeq, chainWords(chain.brokenAtSeq)[chain.fault])
  const newer = entries.find(({ kind, version }) => !isKind(kind) || version > versionOf(kind))
  return newer
    ? at(newer.seq, 'this program is older than what wrote it and cannot read it; update first')
    : null
}

const faultOfHead = ({ entries, number, at }: Order, head: StoredHead | null): Fault | null => {
  const last = entries.at(-1)
  if (!head || !last) return { where: `Order ${number}`, what: 'it has entries and no head' }
  return head.seq === last.seq && head.hash === last.hash
    ? null
    : at(last.seq, `the order's head names entry ${head.seq} with another hash or number than the last entry`)
}

const faultOfSides = async ({ pool, shopId, entries, at }: Order): Promise<Fault | null> => {
  const named = entries.flatMap((entry) => sidesNamedIn(entry).map((side) => ({ ...side, seq: entry.seq })))
  const digests = [...new Set(named.map(({ digest }) => digest))]
  const stored = new Map(
    (await listStoredSides(pool, shopId, digests)).map((row) => [`${row.side} ${row.digest}`, row]),
  )
  const erased = await listErased(pool, shopId, digests)
  for (const { side, digest, seq } of named) {
    const row = stored.get(`${side} ${digest}`)
    if (!row) {
      if (!erased.has(digest))
        return at(seq, `the ${side} text that it names is missing, and no erasure says why`)
    } else if (sideDigest(row.text, row.salt) !== digest)
      return at(seq, `the ${side} text beside it does not match the digest that it names`)
  }
  return null
}

const faultOfAgreement = async ({ pool, shopId, entries, at }: Order): Promise<Fault | null> => {
  const fault =
    (await faultOfSecondPersons(pool, shopId, entries)) ?? (await faultOfSheets(pool, shopId, entries))
  return fault && at(fault.seq, fault.what)
}

const faultOfReports = async ({
  pool,
  shopId,
  orderId,
  number,
  entries,
  at,
  judge,
  stamps,
}: Order): Promise<Fault | null> => {
  const rows = await listReportRows(pool, shopId, orderId)
  for (const entry of entries) {
    if (entry.kind !== 'report.sealed') continue
    const row = rows.find(({ entryId }) => entryId === entry.id)
    const { pdfSha256 } = entry.payload
    if (!row) return at(entry.seq, 'the sealed report is missing from the list of reports')
    if (
      row.number !== entry.given.reportNumber ||
      row.sha256 !== pdfSha256 ||
      row.sealedAt.toISOString() !== entry.receivedAt
    )
      return at(entry.seq, `the list of reports says other things of report ${row.number} than its entry`)
    const bytes = await findBlobBytes(pool, shopId, pdfSha256)
    if (!bytes) {
      if (!(await listErased(pool, shopId, [pdfSha256])).has(pdfSha256))
        return at(entry.seq, `the file of report ${row.number} is missing, and no erasure says why`)
    } else if (createHash('sha256').update(bytes).digest('hex') !== pdfSha256)
      return at(entry.seq, `the file of report ${row.number} is not the one that was sealed`)
    else {
      const stamp = await verifyStamp(pool, judge, { shopId, number: row.number }, bytes)
      if (stamp === 'bad') return at(entry.seq, `the time-stamp of report ${row.number} does not hold`)
      if (stamp) stamps.push(stamp)
    }
  }
  const stray = rows.find(({ entryId }) => !entries.some(({ id }) => id === entryId))
  return stray
    ? { where: `Order ${number}`, what: `report ${stray.number} is listed and no entry sealed it` }
    : null
}

const chainWords = (seq: number): Readonly<Record<ChainFault, string>> => ({
  missing: `entry ${seq} is missing or out of place`,
  unlinked: `entry ${seq} does not follow the entry before it`,
  changed: `entry ${seq} was changed after it was written`,
})
