import type { ReportCheck } from '@bayledger/contract/reports'
import { signatureValueOf, stampIn } from '@bayledger/report/stamp/stamp-in-file'
import { findBlobBytes } from '../../../core/blobs.ts'
import type { Parts } from '../../../deps.ts'
import type { Stamping } from '../../../stamping/stamping.ts'
import { findStampBeside, listReportsToStamp, noteStamp } from '../store/report-stamps.ts'

type ReportName = { readonly shopId: string; readonly number: string }

/** A report that was sealed longer ago gets none any more: what it could show is no news. */
const triedForMs = 30 * 86_400_000
const mostARound = 20

/**
 * Asks for the time-stamps that could not be had when reports were sealed, and keeps each beside its report: the file that was given
 * out stays as it is. Ends at the first that cannot be had. Gives how many reports were noted.
 */
export const stampLateReports = async ({
  pool,
  clock,
  stamping,
}: Pick<Parts, 'pool' | 'clock' | 'stamping'>): Promise<number> => {
  const due = await listReportsToStamp(pool, new Date(clock.now().getTime() - triedForMs), mostARound)
  let noted = 0
  for (const { shopId, number, sha256 } of due) {
    const bytes = await findBlobBytes(pool, shopId, sha256)
    if (bytes === null) continue
    const isWithin = stampIn(bytes) !== null
    const token = isWithin ? null : await stamping.stamp(bytes)
    if (!isWithin && token === null) return noted
    await noteStamp(pool, { shopId, number, token, at: clock.now() })
    noted += 1
  }
  return noted
}

/** The time-stamp of a report, judged: the one in its file, or the one that is kept beside it; `null` where there is neither. */
export const stampOf = async (
  { pool, stamping }: { readonly pool: Parts['pool']; readonly stamping: Pick<Stamping, 'judge'> },
  { shopId, number }: ReportName,
  bytes: Uint8Array,
): Promise<ReportCheck['stamp']> => {
  const within = stampIn(bytes)
  const beside = within === null ? await findStampBeside(pool, shopId, number) : null
  const token = within ?? beside
  if (token === null) return null
  const over = within === null ? bytes : (signatureValueOf(bytes) ?? new Uint8Array())
  const verdict = await stamping.judge(token, over)
  return {
    where: within === null ? 'beside' : 'within',
    verdict: verdict.is,
    authority: verdict.is === 'bad' ? null : verdict.authority,
    at: verdict.is === 'bad' ? null : verdict.at,
    token: beside && Buffer.from(beside).toString('base64'),
  }
}
