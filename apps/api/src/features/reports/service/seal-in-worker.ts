import { Worker } from 'node:worker_threads'
import type { ReportContent } from '@bayledger/report/content'
import type { SigningIdentity } from '../../../deps.ts'

export type SealTask = {
  readonly content: ReportContent
  readonly signing: SigningIdentity
  readonly reason: string
  readonly signedAt: string
}

/** Draws and seals on a thread of its own: the service goes on answering meanwhile. */
export const sealInWorker = (task: SealTask): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./seal-worker.ts', import.meta.url), { workerData: task })
    worker.once('message', (bytes: Uint8Array) => {
      resolve(bytes)
      void worker.terminate()
    })
    worker.once('error', reject)
    worker.once('exit', (code) => reject(new Error(`the sealing thread ended (${code}) without a report`)))
  })
