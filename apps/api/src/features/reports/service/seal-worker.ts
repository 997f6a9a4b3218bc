import { parentPort, workerData } from 'node:worker_threads'
import { drawReport } from '@bayledger/report/drawing/draw-report'
import { sealReport } from '@bayledger/report/seal'
import type { SealTask } from './seal-in-worker.ts'

const { content, signing, reason, signedAt } = workerData as SealTask
parentPort?.postMessage(
  await sealReport(await drawReport(content), {
    certificate: signing.certificatePem,
    privateKey: signing.privateKeyPem,
    reason,
    signedAt,
  }),
)
