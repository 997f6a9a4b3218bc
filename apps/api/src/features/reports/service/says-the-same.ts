import type { Entry } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import type { ReportContext, ReportStamp } from '@bayledger/report/compose-content'
import { isSameButForSignature } from '@bayledger/report/stamp/stamp-in-file'
import type { SigningIdentity, Stamping } from '../../../deps.ts'
import type { StoredReport } from '../store.ts'
import { sealInWorker } from './seal-in-worker.ts'
import { sealTaskOf } from './seal-task.ts'

export type Earlier = {
  readonly report: StoredReport
  readonly bytes: Uint8Array
}

/**
 * Whether an order's newest report says all that one sealed now would say. Nothing may have been written since, and that report,
 * drawn again from its own entries with the names, photos, language and key of today, must come out byte for byte but for its
 * signature.
 */
export const saysTheSame = async (
  { signing, stamping }: { readonly signing: SigningIdentity; readonly stamping: Pick<Stamping, 'host'> },
  entries: readonly Entry[],
  { report, bytes }: Earlier,
  context: Omit<ReportContext, 'stamp'>,
): Promise<boolean> => {
  const sealed = entries.findLast(({ kind }) => kind === 'report.sealed')
  if (sealed?.kind !== 'report.sealed' || sealed.id !== report.entryId) return false
  const {
    composedFrom: { seq },
    supersedes,
  } = sealed.payload
  if (entries.some((entry) => entry.seq > seq && entry.kind !== 'report.sealed')) return false
  const state = fold(entries.filter((entry) => entry.seq <= seq))
  const { host } = stamping
  const stamps: readonly (ReportStamp | null)[] =
    host === null
      ? [null]
      : [
          { is: 'within', authority: host },
          { is: 'missing', authority: host },
        ]
  for (const stamp of stamps) {
    const then = { ...context, stamp, reportNumber: report.number, composedAt: sealed.writtenAt, supersedes }
    const again = await sealInWorker(sealTaskOf(state, signing, then))
    if (isSameButForSignature(again, bytes)) return true
  }
  return false
}
