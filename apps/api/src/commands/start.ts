import { spawn } from 'node:child_process'
import { constants, setPriority } from 'node:os'
import { join } from 'node:path'
import type { ShopDatabase } from '@bayledger/db/shop-database'
import { childEnvironment, readConfig } from '../config.ts'
import { keepCompiled } from '../keep-compiled.ts'

/**
 * `npm start`: writes the database client and builds the three faces where they are missing or old, then starts the
 * service. Run by Node 24, which the repository brings along.
 */
const root = join(import.meta.dirname, '../../../..')
const say = (line: string): void => console.log(line)
const begun = performance.now()

const stepped = async (words: string, command: string, args: readonly string[]): Promise<void> => {
  const timer = setTimeout(() => say(`${words} …`), 1_000)
  const { status, output } = await run(command, args)
  clearTimeout(timer)
  if (status === 0) return
  console.error(output)
  console.error(`${words} failed. The lines above say why.`)
  process.exit(1)
}

const run = (command: string, args: readonly string[]): Promise<{ status: number | null; output: string }> =>
  new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, env: childEnvironment(join(root, 'node_modules/.bin')) })
    let output = ''
    child.stdout.on('data', (text) => {
      output += text
    })
    child.stderr.on('data', (text) => {
      output += text
    })
    child.on('error', (error) => resolve({ status: 1, output: `${output}\n${error.message}` }))
    child.on('close', (status) => resolve({ status, output }))
  })

/** A database is made and started in processes of its own, while this one loads the service. */
const openDatabase = async (): Promise<ShopDatabase> => {
  const { openShopDatabase } = await import('@bayledger/db/shop-database')
  return openShopDatabase(readConfig(), say, 'refuse')
}

const facesBuilt = stepped(
  'Building the desk, the bay and the customer page',
  join(root, 'node_modules/.bin/turbo'),
  ['run', 'build', '--output-logs=errors-only', '--no-update-notifier'],
)
keepCompiled()
const opening = openDatabase()
// Nobody waits for it yet; the service does, and says what is wrong with it.
opening.catch(() => undefined)
await stepped('Writing the database client', process.execPath, [
  join(root, 'packages/db/src/commands/generate.ts'),
])

// Only now: the service imports the database client that may just have been written.
const { serve } = await import('../serve.ts')
await serve(facesBuilt, begun, opening)

// Until a file's compressed copy is there, it is served as it is.
const compressing = spawn(process.execPath, [join(root, 'apps/web/compress.ts')], { stdio: 'ignore' })
process.on('exit', () => compressing.kill())
if (compressing.pid !== undefined) setPriority(compressing.pid, constants.priority.PRIORITY_LOW)
