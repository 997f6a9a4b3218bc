import { stampIn } from '@bayledger/report/stamp/stamp-in-file'
import { findBlobBytes } from '../../../core/blobs.ts'
import type { Parts } from '../../../deps.ts'
import { listReportsToStamp, noteStamp } from '../store/report-stamps.ts'

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
