import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '../embedded/start.ts'

/** Runs `work` on an empty database of a temporary PostgreSQL, and removes both. */
export async function withScratchDatabase<T>(work: (url: string) => Promise<T>): Promise<T> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-scratch-'))
  const server = await startEmbeddedPostgres({
    dataFolder,
    progress: (line) => console.error(line),
    settings: { fsync: 'off' },
  })
  try {
    return await work(server.ownerUrl)
  } finally {
    await server.stop()
    rmSync(dataFolder, { recursive: true, force: true })
  }
}
