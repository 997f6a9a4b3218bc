import type { ReportCheck } from '@bayledger/contract/reports'
import { signatureValueOf, stampIn } from '@bayledger/report/stamp/stamp-in-file'
import type { Pool } from 'pg'
import { findStampBeside } from '../core/stamp-beside.ts'
import type { Stamping } from '../deps.ts'

type ReportName = { readonly shopId: string; readonly number: string }

/** The time-stamp of a report, judged: the one in its file, or the one that is kept beside it; `null` where there is neither. */
export const stampOf = async (
  { pool, stamping }: { readonly pool: Pool; readonly stamping: Pick<Stamping, 'judge'> },
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
