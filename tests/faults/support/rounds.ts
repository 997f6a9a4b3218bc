import { people } from '../../../prisma/seeds/demo/people.ts'
import { startFaultShop } from './fault-shop.ts'
import { enrollTablet } from './fault-tablet.ts'
import { startNetwork } from './network.ts'
import { type RoundResult, runRound } from './round.ts'
import { usualSteps } from './round-plan.ts'

export type Tally = {
  readonly entries: number
  readonly lost: number
  readonly twice: number
  readonly diverged: number
  /** How many rounds went wrong, or broken chains and the like at the end. */
  readonly broken: number
}

/** After so many rounds the database is verified, as at the end. */
const roundsPerVerification = 10

/** The seeds of so many rounds, each once, to whoever asks next. */
export function* seedsOf({ rounds, seed }: { readonly rounds: number; readonly seed: number }) {
  for (let round = 0; round < rounds; round += 1) yield seed + round
}

/**
 * Runs a round of each seed on one shop with two tablets, of `steps` for each tablet; `say` gets a line a round, and of a round
 * that fails its seed and its history. A tablet that cannot go on fails its round. Several shops may share the seeds.
 */
export const runRounds = async (
  database: { readonly ownerUrl: string; readonly serviceUrl: string },
  seeds: Iterable<number>,
  say: (line: string) => void,
  steps: number = usualSteps,
): Promise<Tally> => {
  const shop = await startFaultShop(database)
  const { port } = shop.service
  const networks = await Promise.all([startNetwork(port), startNetwork(port)])
  const tablets = await Promise.all([
    enrollTablet(networks[0], people.ines, await shop.enrollmentCode()),
    enrollTablet(networks[1], people.bo, await shop.enrollmentCode()),
  ])
  let tally = nothingFound
  let done = 0
  try {
    for (const seed of seeds) {
      const begun = performance.now()
      const history: string[] = []
      const note = (words: string) => history.push(`${secondsSince(begun)} s ${words}`)
      const result = await runRound({ shop, tablets }, { seed, steps }, note).catch(brokenOff)
      done += 1
      const found = done % roundsPerVerification === 0 ? await shop.verify() : []
      const faults = [...result.faults, ...found]
      tally = addedUp(tally, { ...result, broken: faults.length > 0 ? 1 : 0 })
      say(`seed ${seed}: ${result.entries} entries, ${secondsSince(begun)} s`)
      if (faults.length === 0) continue
      const heard = tablets.flatMap(({ person, network }) =>
        network.history().map((line) => `network of ${person.name}: ${line}`),
      )
      for (const line of [...history, ...heard, ...faults]) say(`  ${line}`)
    }
    const found = await shop.verify()
    for (const line of found) say(`  ${line}`)
    return addedUp(tally, { ...nothingFound, broken: found.length > 0 ? 1 : 0 })
  } finally {
    for (const tablet of tablets) await tablet.throwAway()
    for (const network of networks) await network.stop()
    await shop.stop()
  }
}

const nothingFound: Tally = { entries: 0, lost: 0, twice: 0, diverged: 0, broken: 0 }

export const addedUp = (one: Tally, other: Tally): Tally => ({
  entries: one.entries + other.entries,
  lost: one.lost + other.lost,
  twice: one.twice + other.twice,
  diverged: one.diverged + other.diverged,
  broken: one.broken + other.broken,
})

const brokenOff = (problem: unknown): RoundResult => ({
  entries: 0,
  lost: 0,
  twice: 0,
  diverged: 0,
  faults: [`the round broke off: ${problem instanceof Error ? problem.stack : String(problem)}`],
})

const secondsSince = (begun: number): string => ((performance.now() - begun) / 1000).toFixed(1)
