import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export type RunningService = { readonly address: string; readonly stop: () => Promise<void> }

type OwnProcess = RunningService & {
  /** Resolves once it has said these words on its terminal. */
  readonly said: (words: string) => Promise<void>
}

/**
 * The product as `npm start` runs it, with the demo shop: its own process, and the database of `database` (one
 * address for each role) or, without one, the PostgreSQL that it brings along. Its data folder is `data`, or one that
 * is removed at the end. `built`: the faces and the database client are known to be fresh, and are not looked at again.
 * `seed` `none`: without the demo, as the first page finds it; `demo`: with the year before the demo's day.
 */
export const startService = async (
  database: { readonly ownerUrl: string; readonly serviceUrl: string } | null,
  data: string | null = null,
  faces: 'as-they-are' | 'built' = 'as-they-are',
  seed: 'demo' | 'demo-day' | 'none' = 'demo-day',
): Promise<OwnProcess> => {
  const folder = data ?? mkdtempSync(join(tmpdir(), 'bayledger-service-'))
  const port = await freePort()
  const child = spawn(
    process.execPath,
    [`apps/api/src/commands/${faces === 'built' ? 'serve' : 'start'}.ts`],
    {
      env: {
        ...process.env,
        DATA_FOLDER: folder,
        SHOP_SEED: seed,
        PORT: String(port),
        ...(database === null
          ? {}
          : { DATABASE_URL: database.serviceUrl, DATABASE_OWNER_URL: database.ownerUrl }),
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  )
  let output = ''
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (text: Buffer) => {
      output += text
    })
  const said = (words: string) =>
    new Promise<void>((resolve, reject) => {
      const look = () => {
        if (output.includes(words)) resolve()
      }
      child.stdout.on('data', look)
      child.stderr.on('data', look)
      child.on('exit', (code) => reject(new Error(`the service ended with ${code}:\n${output}`)))
      look()
    })
  await said('Bayledger is ready')
  return {
    address: `http://localhost:${port}`,
    said,
    stop: async () => {
      const ended = new Promise((resolve) => child.on('exit', resolve))
      child.kill('SIGTERM')
      await ended
      if (data === null) rmSync(folder, { recursive: true, force: true })
    },
  }
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer()
    server.on('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => (address !== null && typeof address === 'object' ? resolve(address.port) : reject()))
    })
  })
