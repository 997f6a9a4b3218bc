import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'

/** What `npm ci` does last: writes the database client and makes the built-in PostgreSQL loadable, and compiles beside that. */
const root = join(import.meta.dirname, '../../../..')
const run = (...[file = '', ...rest]: readonly string[]) =>
  spawn(process.execPath, [join(root, file), ...rest], { stdio: 'inherit' })
const statusOf = async (...command: readonly string[]): Promise<number> =>
  Number((await once(run(...command), 'exit'))[0] ?? 1)

// Without it the first start compiles itself.
const compiling = 'apps/api/src/commands/compile-ahead.ts'
const ahead = statusOf(compiling)
const written = await statusOf('packages/db/src/commands/generate.ts')
const service = statusOf(compiling, 'service')
const linked = await statusOf('packages/db/src/commands/link-libraries.ts')
await ahead
await service
process.exit(written || linked)
