import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { CONFIG_FILE, GENERATED_FOLDER, SCHEMA_FILE } from '../migrations/places.ts'

/** Writes Prisma's client from the schema, when the schema or Prisma changed since it was last written. */
const require = createRequire(import.meta.url)
const cli = join(require.resolve('prisma/package.json'), '../build/index.js')
const stampFile = join(GENERATED_FOLDER, 'made-from.txt')

const stamp = createHash('sha256')
  .update(readFileSync(SCHEMA_FILE))
  .update(readFileSync(require.resolve('prisma/package.json')))
  .digest('hex')

if (!existsSync(stampFile) || readFileSync(stampFile, 'utf8') !== stamp) {
  console.log('writing the database client from prisma/schema.prisma …')
  // The command line looks for a schema engine before anything else and would download one; it never runs it to
  // generate, so any program that exists will do.
  const env = {
    ...process.env,
    PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
    PRISMA_HIDE_UPDATE_MESSAGE: '1',
  }
  const run = spawnSync(process.execPath, [cli, 'generate', '--config', CONFIG_FILE], {
    env,
    encoding: 'utf8',
  })
  if (run.status !== 0) {
    console.error(run.stdout, run.stderr)
    process.exit(1)
  }
  mkdirSync(GENERATED_FOLDER, { recursive: true })
  writeFileSync(stampFile, stamp)
}
