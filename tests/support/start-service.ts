import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export type RunningService = { readonly address: string; readonly stop: () => Promise<void> }

/**
 * The product as `npm start` runs it, with the demo shop: its own process, and the database of `database` (one
 * address for each role) or, without one, the PostgreSQL that it brings along. Its data folder is `data`, or one that
 * is removed at the end. `built`: the faces and the database client are known to be fresh, and are not looked at again.
 * `seed` `none`: without the demo, as the first page finds it.
 */
export const startService = async (
  database: { readonly ownerUrl: string; readonly serviceUrl: string } | null,
  data: string | null = null,
  faces: 'as-they-are' | 'built' = 'as-they-are',
  seed: 'demo-day' | 'none' = 'demo-day',
): Promise<RunningService> => {
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
  const ready = new Promise<void>((resolve, reject) => {
    const hear = (text: Buffer) => {
      output += text
      if (output.includes('Bayledger is ready')) resolve()
    }
    child.stdout.on('data', hear)
    child.stderr.on('data', hear)
    child.on('exit', (code) => reject(new Error(`the service ended with ${code}:\n${output}`)))
  })
  await ready
  return {
    address: `http://localhost:${port}`,
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
