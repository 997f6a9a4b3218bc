import { spawnSync } from 'node:child_process'
import { accessSync, constants, statSync } from 'node:fs'
import { EmbeddedPostgresProblem } from './problem.ts'

/** What to put before a PostgreSQL program so that it agrees to run for the user we are. */
export type Identity = readonly string[]

const AS_ANOTHER: Identity = ['unshare', '--user', '--map-user=1000', '--map-group=1000', '--']

/**
 * PostgreSQL refuses to run as root. As root it is run in a user namespace of its own, where it sees itself
 * as user 1000 while its files stay root's; so it also reaches a folder that is closed to everyone else.
 * @throws EmbeddedPostgresProblem that says what to do when neither way works.
 */
export function chooseIdentity(dataFolder: string, program: string): Identity {
  if (process.platform === 'win32' || process.getuid?.() !== 0) {
    if (!canWrite(dataFolder)) throw new EmbeddedPostgresProblem(notOurs(dataFolder))
    return []
  }
  if (statSync(dataFolder).uid !== 0) throw new EmbeddedPostgresProblem(notOurs(dataFolder))
  const [command = '', ...prefix] = AS_ANOTHER
  const probe = spawnSync(command, [...prefix, program, '--version'], { encoding: 'utf8' })
  if (probe.error === undefined && probe.status === 0) return AS_ANOTHER
  const why = probe.error?.message ?? probe.stderr.trim()
  throw new EmbeddedPostgresProblem(
    [
      `PostgreSQL does not run as root, and it could not be run as another user here (${why}).`,
      'Do one of these: start Bayledger as an ordinary user who owns its folder; or allow "unshare --user"',
      `(package util-linux; in a container it needs user namespaces) with every folder above ${program} readable;`,
      'or set DATABASE_URL to a PostgreSQL of your own.',
    ].join(' '),
  )
}

function canWrite(folder: string): boolean {
  try {
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK)
    return true
  } catch {
    return false
  }
}

function notOurs(folder: string): string {
  return `The data folder ${folder} belongs to another user. ls -ld ${folder} shows whose it is: run this as that user, or choose another folder.`
}
