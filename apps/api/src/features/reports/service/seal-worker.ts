import { parentPort } from 'node:worker_threads'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { sealReport } from '@bayledger/report/seal'
import type { SealAnswer, SealMessage, SealTask } from './seal-in-worker.ts'

parentPort?.on('message', async ({ number, task }: SealMessage) => {
  const answer: SealAnswer = await seal(task).then(
    (bytes) => ({ number, bytes }),
    (error: unknown) => ({
      number,
      failure: error instanceof Error ? (error.stack ?? error.message) : String(error),
    }),
  )
  parentPort?.postMessage(answer)
})

const seal = async ({ content, signing, reason, signedAt, roomForStamp }: SealTask): Promise<Uint8Array> =>
  sealReport(await drawReport(content), {
    certificate: signing.certificatePem,
    privateKey: signing.privateKeyPem,
    reason,
    signedAt,
    roomForStamp,
  })
