import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Binaries } from './binaries.ts'
import type { Identity } from './identity.ts'
import { isAlive } from './lock-file.ts'
import { EmbeddedPostgresProblem } from './problem.ts'
import { runProgram } from './run-program.ts'
import { drawSecrets, keepSecrets } from './secrets.ts'
import { syncFolder } from './sync-folder.ts'

const UNFINISHED = 'postgres-unfinished-'

/**
 * Makes the cluster at `cluster` unless it is there. It is made beside and renamed when whole and on disk, so
 * that a kill or a power cut in the middle leaves rubbish, which the next start clears, and never half a cluster.
 */
export async function makeCluster(
  dataFolder: string,
  cluster: string,
  binaries: Binaries,
  identity: Identity,
): Promise<void> {
  clearUnfinished(dataFolder)
  if (existsSync(cluster)) return
  const unfinished = join(dataFolder, `${UNFINISHED}${process.pid}`)
  const secrets = drawSecrets()
  mkdirSync(unfinished, { mode: 0o700 })
  const passwordFile = join(unfinished, 'password')
  writeFileSync(passwordFile, secrets.superuser, { mode: 0o600 })
  const made = join(unfinished, 'cluster')
  const outcome = await runProgram(identity, binaries.initdb, [
    `--pgdata=${made}`,
    '--username=postgres',
    `--pwfile=${passwordFile}`,
    '--auth=scram-sha-256',
    '--data-checksums',
    '--encoding=UTF8',
    '--locale=C',
    '--locale-provider=builtin',
    '--builtin-locale=C.UTF-8',
    '--no-instructions',
  ])
  if (outcome.status !== 0) {
    rmSync(unfinished, { recursive: true, force: true })
    throw new EmbeddedPostgresProblem(
      `The database could not be made in ${dataFolder}: ${outcome.output.trim().split('\n').slice(-4).join(' ')}`,
    )
  }
  keepSecrets(made, secrets)
  syncFolder(made)
  moveIntoPlace(made, cluster)
  syncFolder(dataFolder)
  rmSync(unfinished, { recursive: true, force: true })
}

/** Two first starts at once both make a cluster; the first to rename wins, the other uses that one. */
function moveIntoPlace(made: string, cluster: string): void {
  try {
    renameSync(made, cluster)
  } catch (error) {
    if (!existsSync(join(cluster, 'PG_VERSION'))) throw error
  }
}

function clearUnfinished(dataFolder: string): void {
  for (const name of readdirSync(dataFolder)) {
    if (!name.startsWith(UNFINISHED)) continue
    const maker = Number(name.slice(UNFINISHED.length))
    if (maker !== process.pid && isAlive(maker)) continue
    try {
      rmSync(join(dataFolder, name), { recursive: true, force: true, maxRetries: 5, retryDelay: 100 })
    } catch {
      // The killed start's initdb may still be writing there; a later start clears what it leaves.
    }
  }
}
