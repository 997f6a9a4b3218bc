import { randomBytes } from 'node:crypto'
import { chmodSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { EmbeddedPostgresProblem } from './problem.ts'

/**
 * Passwords of three users of the cluster: its superuser; `application`, who owns the shop's database and migrates it;
 * `service`, who owns nothing and serves.
 */
export type Secrets = { readonly superuser: string; readonly application: string; readonly service: string }

const FILE = 'bayledger-passwords.json'

const draw = () => randomBytes(24).toString('base64url')

/** Draws the passwords that are kept inside the cluster, so that they come and go with it. */
export function drawSecrets(): Secrets {
  return { superuser: draw(), application: draw(), service: draw() }
}

/** Writes the passwords, readable only by their owner. */
export function keepSecrets(cluster: string, secrets: Secrets): void {
  writeFileSync(join(cluster, FILE), `${JSON.stringify(secrets)}\n`, { mode: 0o600, flush: true })
}

/** Reads the passwords back; closes the file again if it was left readable by others. */
export function readSecrets(cluster: string): Secrets {
  const file = join(cluster, FILE)
  let parsed: unknown
  try {
    if (process.platform !== 'win32') chmodSync(file, 0o600)
    parsed = JSON.parse(readFileSync(file, 'utf8'))
  } catch (error) {
    throw new EmbeddedPostgresProblem(
      `The passwords of the database cannot be read from ${file} (${String(error)}). Put the file back from a backup of the same folder.`,
    )
  }
  if (!isSecrets(parsed)) {
    throw new EmbeddedPostgresProblem(`${file} does not hold the passwords. Put it back from a backup.`)
  }
  if (parsed.service !== undefined) return { ...parsed, service: parsed.service }
  // A cluster from before the service had a user of its own gets that user's password now.
  const completed = { ...parsed, service: draw() }
  keepSecrets(cluster, completed)
  return completed
}

type Kept = Omit<Secrets, 'service'> & { readonly service?: string }

function isSecrets(value: unknown): value is Kept {
  if (typeof value !== 'object' || value === null) return false
  return (
    'superuser' in value &&
    typeof value.superuser === 'string' &&
    'application' in value &&
    typeof value.application === 'string' &&
    (!('service' in value) || typeof value.service === 'string')
  )
}
