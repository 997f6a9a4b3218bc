import { readConfig } from './config.ts'
import { endWithNpm } from './end-with-npm.ts'
import { startService } from './main.ts'

const say = (line: string): void => console.log(line)

/**
 * Runs the service until SIGINT or SIGTERM, then finishes what is in flight and exits. Prints the address and how to
 * sign in; a service that cannot start says why and exits with 1. `facesBuilt` is awaited before it listens; `begun`
 * is the reading of `performance.now()` from which the time to start is counted.
 */
export const serve = async (facesBuilt: Promise<void>, begun: number): Promise<void> => {
  try {
    const service = await startService(readConfig(), say, facesBuilt)
    const seconds = ((performance.now() - begun) / 1000).toFixed(1)
    say('')
    say(`Bayledger is ready after ${seconds} s: ${service.address}`)
    say('')
    for (const line of service.signIn) say(line)
    let stopping = false
    const stop = async () => {
      if (stopping) return
      stopping = true
      say('Finishing what is in flight, then stopping …')
      await service.stop()
      process.exit(0)
    }
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop())
    endWithNpm(() => void stop())
  } catch (error) {
    console.error(error instanceof Error ? startFailureText(error) : String(error))
    process.exit(1)
  }
}

/** What the network and PostgreSQL say of an address that is wrong (manual, appendix A), and what to do. */
const databaseWords: Readonly<Record<string, string>> = {
  ECONNREFUSED: 'nothing answers there. Start it, or correct host and port',
  ENOTFOUND: 'there is no such host. Correct it',
  ETIMEDOUT: 'nothing answers there. Look at the network between, or correct host and port',
  '28P01': 'it refuses the name or the password. Correct them',
  '28000': 'it does not let this role in from here. Correct the role, or its pg_hba.conf',
  '3D000': 'it has no such database. Make it, or correct the name',
}

/** A problem that was foreseen says what to do and needs no stack. An address is never printed: it may hold a password. */
function startFailureText(error: Error): string {
  if (error.name.endsWith('Problem')) return error.message
  const code = 'code' in error ? String(error.code) : ''
  if (code === 'EADDRINUSE')
    return `The port is taken by another program: ${error.message}. Choose another with PORT=4311 npm start, or stop that one.`
  const words = databaseWords[code]
  return words === undefined
    ? (error.stack ?? error.message)
    : `The database of DATABASE_URL or DATABASE_OWNER_URL cannot be reached: ${words}, then start again.`
}
