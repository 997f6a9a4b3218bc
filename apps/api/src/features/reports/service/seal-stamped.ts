import type { ReportStamp } from '@bayledger/report/compose-content'
import { signatureValueOf, withStamp } from '@bayledger/report/stamp/stamp-in-file'
import type { Deps } from '../../../deps.ts'
import { type SealTask, sealInWorker } from './seal-in-worker.ts'

/**
 * Seals with a time-stamp where an authority is set. Where none is to be had, the report is drawn and sealed once more and says that
 * it has none: nobody has been given the first file.
 */
export const sealStamped = async (
  { stamping }: Pick<Deps, 'stamping'>,
  taskFor: (stamp: ReportStamp | null) => SealTask,
): Promise<Uint8Array> => {
  const authority = stamping.host
  if (authority === null) return sealInWorker(taskFor(null))
  const sealed = await sealInWorker(taskFor({ is: 'within', authority }))
  const value = signatureValueOf(sealed)
  const token = value && (await stamping.stampWhileWaited(value))
  return (token && withStamp(sealed, token)) ?? sealInWorker(taskFor({ is: 'missing', authority }))
}
