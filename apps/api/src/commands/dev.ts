import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { childEnvironment, readConfig } from '../config.ts'
import { endWithNpm } from '../end-with-npm.ts'

/**
 * `npm run dev`: rebuilds the three faces whenever one of their files changes, and restarts the service whenever a
 * file that it imports changes. The database stays up throughout: the embedded one of the data folder, or the one of
 * `DATABASE_URL`. A change of `prisma/schema.prisma` needs a new start. Ends with Ctrl+C or SIGTERM, at any moment of
 * starting too, and leaves no process behind.
 */
const root = join(import.meta.dirname, '../../../..')
const say = (line: string): void => console.log(line)
const config = readConfig()

type Running = { readonly child: ChildProcess; readonly ended: Promise<number | null> }
const children: Running[] = []
let database: ReturnType<typeof startEmbeddedPostgres> | null = null
let stopping = false

const run = (args: readonly string[], environment: NodeJS.ProcessEnv = {}): Running => {
  const child = spawn(process.execPath, args, {
    cwd: root,
    env: { ...childEnvironment(join(root, 'node_modules/.bin')), ...environment },
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  })
  const running = { child, ended: new Promise<number | null>((resolve) => child.on('exit', resolve)) }
  children.push(running)
  return running
}

/** Ends the process; what is still starting is waited for, so that it can be ended too. */
const stop = async (code: number): Promise<never> => {
  if (!stopping) {
    stopping = true
    for (const { child } of children) child.kill('SIGTERM')
    await Promise.all(children.map(({ ended }) => ended))
    const started = await database?.catch(() => null)
    await started?.stop()
    process.exit(code)
  }
  return new Promise(() => undefined)
}
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop(0))
endWithNpm(() => void stop(0))

/** What was waited for, unless everything is being stopped meanwhile: then nothing further is started. */
const unlessStopping = async <T>(waited: Promise<T>): Promise<T> => {
  const result = await waited
  return stopping ? stop(0) : result
}

const client = run([join(root, 'packages/db/src/commands/generate.ts')])
if ((await unlessStopping(client.ended)) !== 0) await stop(1)

if (config.databaseUrl === null)
  database = startEmbeddedPostgres({ dataFolder: config.dataFolder, progress: say })
const { serviceUrl, ownerUrl } = (await unlessStopping(Promise.resolve(database))) ?? {}

const faces = run([join(root, 'apps/web/watch.ts')])
const built = new Promise<'built'>((resolve) => faces.child.once('message', () => resolve('built')))
if ((await unlessStopping(Promise.race([built, faces.ended]))) !== 'built') await stop(1)

const service = run(
  ['--watch', '--watch-preserve-output', join(root, 'apps/api/src/commands/serve.ts')],
  serviceUrl === undefined ? {} : { DATABASE_URL: serviceUrl, DATABASE_OWNER_URL: ownerUrl },
)
await Promise.race([faces.ended, service.ended])
await stop(1)
