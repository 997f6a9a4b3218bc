import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'

/** What `npm ci` does last: writes the database client and makes the built-in PostgreSQL loadable, and compiles beside that. */
const root = join(import.meta.dirname, '../../../..')
const run = (file: string) => spawn(process.execPath, [join(root, file)], { stdio: 'inherit' })
const statusOf = async (file: string): Promise<number> => Number((await once(run(file), 'exit'))[0] ?? 1)

// Without it the first start compiles itself.
const ahead = statusOf('apps/api/src/commands/compile-ahead.ts')
const written = await statusOf('packages/db/src/commands/generate.ts')
const linked = await statusOf('packages/db/src/commands/link-libraries.ts')
await ahead
process.exit(written || linked)
