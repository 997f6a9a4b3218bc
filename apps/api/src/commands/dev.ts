import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { childEnvironment, readConfig } from '../config.ts'

/**
 * `npm run dev`: rebuilds the three faces whenever one of their files changes, and restarts the service whenever a
 * file that it imports changes. The database stays up throughout: the embedded one of the data folder, or the one of
 * `DATABASE_URL`. A change of `prisma/schema.prisma` needs a new start. Ends with Ctrl+C.
 */
const root = join(import.meta.dirname, '../../../..')
const say = (line: string): void => console.log(line)
const config = readConfig()

const run = (args: readonly string[], environment: NodeJS.ProcessEnv = {}): ChildProcess =>
  spawn(process.execPath, args, {
    cwd: root,
    env: { ...childEnvironment(join(root, 'node_modules/.bin')), ...environment },
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  })

const ended = (child: ChildProcess): Promise<number | null> =>
  new Promise((resolve) => child.on('exit', (code) => resolve(code)))

if ((await ended(run([join(root, 'packages/db/src/commands/generate.ts')]))) !== 0) process.exit(1)

const database =
  config.databaseUrl === null
    ? await startEmbeddedPostgres({ dataFolder: config.dataFolder, progress: say })
    : null

const faces = run([join(root, 'apps/web/watch.ts')])
const facesEnded = ended(faces)
const built = new Promise<'built'>((resolve) => faces.once('message', () => resolve('built')))
const children = [faces]
let stopping = false
const stop = async (code: number): Promise<void> => {
  if (stopping) return
  stopping = true
  for (const child of children) child.kill('SIGTERM')
  await Promise.all(children.map((child) => (child.exitCode === null ? ended(child) : null)))
  await database?.stop()
  process.exit(code)
}
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop(0))

if ((await Promise.race([built, facesEnded])) !== 'built') await stop(1)
const service = run(
  ['--watch', '--watch-preserve-output', join(root, 'apps/api/src/commands/serve.ts')],
  database === null ? {} : { DATABASE_URL: database.serviceUrl, DATABASE_OWNER_URL: database.ownerUrl },
)
children.push(service)
await Promise.race([facesEnded, ended(service)])
await stop(1)
