import { readConfig } from './config.ts'
import { endWithNpm } from './end-with-npm.ts'
import { failureWords } from './failure-words.ts'
import { startService } from './main.ts'

const say = (line: string): void => console.log(line)

/**
 * Runs the service until SIGINT or SIGTERM, then finishes what is in flight and exits. Prints the address and how to
 * sign in; a service that cannot start says why and exits with 1. `facesBuilt` is awaited before it listens; `begun`
 * is the reading of `performance.now()` from which the time to start is counted; `opening` is the database where it is
 * being opened already.
 */
export const serve = async (
  facesBuilt: Promise<void>,
  begun: number,
  opening?: Parameters<typeof startService>[3],
): Promise<void> => {
  try {
    const service = await startService(readConfig(), say, facesBuilt, opening)
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
    console.error(failureWords(error))
    process.exit(1)
  }
}
