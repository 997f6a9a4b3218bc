import { spawnSync } from 'node:child_process'
import { join } from 'node:path'

/** `npm run upgrades -- --all`: a shop of every earlier state through all later migrations; without it, of two of them. */
const isAll = process.argv.includes('--all')
const file = 'tests/database/upgrades-from-each.test.ts'
const { status } = spawnSync(
  process.execPath,
  [join('node_modules', 'vitest', 'vitest.mjs'), 'run', '--project', 'api', file],
  { stdio: 'inherit', env: { ...process.env, ...(isAll ? { UPGRADES_FROM: 'all' } : {}) } },
)
process.exitCode = status ?? 1
