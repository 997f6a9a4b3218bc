import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { freePort } from '@bayledger/db/embedded/postmaster'

/** The real service in a process of its own, always at the same port, which may be killed and started again. */
export type ServiceProcess = {
  readonly port: number
  readonly start: () => Promise<void>
  /** SIGKILL: nothing is finished, nothing is closed. */
  readonly kill: () => Promise<void>
  readonly stop: () => Promise<void>
}

/** On the built faces and on a database that is up to date; `environment` is what `apps/api/src/config.ts` reads. */
export const serviceProcess = async (environment: NodeJS.ProcessEnv): Promise<ServiceProcess> => {
  const port = await freePort()
  let child: ChildProcess | null = null
  const end = async (signal: 'SIGKILL' | 'SIGTERM') => {
    if (child === null) return
    const ended = once(child, 'exit')
    child.kill(signal)
    await ended
    child = null
  }
  return {
    port,
    start: async () => {
      child = spawn(process.execPath, ['apps/api/src/commands/serve.ts'], {
        env: {
          ...process.env,
          SHOP_SEED: 'demo-day',
          CALLS_PER_MINUTE: '1000000',
          ...environment,
          PORT: String(port),
        },
        stdio: ['ignore', 'pipe', 'pipe'],
      })
      await isReady(child)
    },
    kill: () => end('SIGKILL'),
    stop: () => end('SIGTERM'),
  }
}

const isReady = (child: ChildProcess): Promise<void> =>
  new Promise((resolve, reject) => {
    let output = ''
    const hear = (text: Buffer) => {
      output += text
      if (output.includes('Bayledger is ready')) resolve()
    }
    child.stdout?.on('data', hear)
    child.stderr?.on('data', hear)
    child.on('exit', (code) => reject(new Error(`the service ended with ${code}:\n${output}`)))
  })
