import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { facesBuild } from './faces-build.ts'

/**
 * What `npm ci` does last: writes the database client and makes the built-in PostgreSQL loadable. Beside that it builds the faces
 * and compiles the service, so that the first start need not; where one of these fails, that start does it and says why.
 */
const root = join(import.meta.dirname, '../../../..')

/** Whether a command ended well. */
const ended = (command: string, ...rest: readonly string[]): Promise<boolean> =>
  new Promise((resolve) => {
    const child = spawn(command, rest, {
      stdio: 'inherit',
      env: { ...process.env, TURBO_TELEMETRY_DISABLED: '1' },
    })
    child.on('error', () => resolve(false))
    child.on('exit', (code) => resolve(code === 0))
  })
const ours = (file: string, ...rest: readonly string[]) => ended(process.execPath, join(root, file), ...rest)

const compiling = 'apps/api/src/commands/compile-ahead.ts'
const ahead = [ended(facesBuild.command, ...facesBuild.arguments), ours(compiling)]
const isWritten = await ours('packages/db/src/commands/generate.ts')
ahead.push(ours(compiling, 'service'))
const isLinked = await ours('packages/db/src/commands/link-libraries.ts')
await Promise.all(ahead)
process.exit(isWritten && isLinked ? 0 : 1)
