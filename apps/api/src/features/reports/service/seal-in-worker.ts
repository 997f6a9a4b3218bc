import { Worker } from 'node:worker_threads'
import type { ReportContent } from '@bayledger/report/content'
import type { SigningIdentity } from '../../../deps.ts'

export type SealTask = {
  readonly content: ReportContent
  readonly signing: SigningIdentity
  readonly reason: string
  readonly signedAt: string
  readonly roomForStamp: boolean
}

export type SealMessage = { readonly number: number; readonly task: SealTask }
export type SealAnswer = { readonly number: number } & (
  | { readonly bytes: Uint8Array }
  | { readonly failure: string }
)

type Waiting = { readonly resolve: (bytes: Uint8Array) => void; readonly reject: (reason: Error) => void }

let worker: Worker | null = null
let lastNumber = 0
const waiting = new Map<number, Waiting>()

/** Draws and seals on a thread of its own, so that the service goes on answering. One thread serves all reports. */
export const sealInWorker = (task: SealTask): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    worker ??= startWorker()
    lastNumber += 1
    waiting.set(lastNumber, { resolve, reject })
    worker.postMessage({ number: lastNumber, task } satisfies SealMessage)
  })

/** Starts the thread before there is anything to seal: loading what it draws with takes most of a second. */
export const getReadyToSeal = (): void => {
  worker ??= startWorker()
}

const startWorker = (): Worker => {
  const started = new Worker(new URL('./seal-worker.ts', import.meta.url))
  started.on('message', (answer: SealAnswer) => {
    const asked = waiting.get(answer.number)
    waiting.delete(answer.number)
    if ('bytes' in answer) asked?.resolve(answer.bytes)
    else asked?.reject(new Error(`sealing failed: ${answer.failure}`))
  })
  started.on('error', giveUp)
  started.on('exit', () => giveUp(new Error('the sealing thread ended')))
  // Nothing to seal is no reason for the process to stay.
  started.unref()
  return started
}

const giveUp = (reason: Error): void => {
  worker = null
  for (const { reject } of waiting.values()) reject(reason)
  waiting.clear()
}
