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

/** `steps`: of each tablet in a round. */
export type RoundsAsked = { readonly rounds: number; readonly seed: number; readonly steps?: number }

/** After so many rounds the database is verified, as at the end. */
const roundsPerVerification = 10

/**
 * Runs so many rounds, the first with this seed and each further one with the next, on one shop with two tablets; `say` gets a line a round, and of a round that fails
 * its seed and its history. A tablet that cannot go on fails its round.
 */
export const runRounds = async (
  database: { readonly ownerUrl: string; readonly serviceUrl: string },
  { rounds, seed, steps = usualSteps }: RoundsAsked,
  say: (line: string) => void,
): Promise<Tally> => {
  const shop = await startFaultShop(database)
  const { port } = shop.service
  const networks = await Promise.all([startNetwork(port), startNetwork(port)])
  const tablets = await Promise.all([
    enrollTablet(networks[0], people.ines, await shop.enrollmentCode()),
    enrollTablet(networks[1], people.bo, await shop.enrollmentCode()),
  ])
  let tally: Tally = { entries: 0, lost: 0, twice: 0, diverged: 0, broken: 0 }
  try {
    for (let round = 1; round <= rounds; round += 1) {
      const begun = performance.now()
      const history: string[] = []
      const note = (words: string) => history.push(`${secondsSince(begun)} s ${words}`)
      const roundSeed = seed + round - 1
      const result = await runRound({ shop, tablets }, { seed: roundSeed, steps }, note).catch(brokenOff)
      const found = round % roundsPerVerification === 0 || round === rounds ? await shop.verify() : []
      const faults = [...result.faults, ...found]
      tally = {
        entries: tally.entries + result.entries,
        lost: tally.lost + result.lost,
        twice: tally.twice + result.twice,
        diverged: tally.diverged + result.diverged,
        broken: tally.broken + (faults.length > 0 ? 1 : 0),
      }
      say(
        `round ${round} of ${rounds}, seed ${roundSeed}: ${result.entries} entries, ${secondsSince(begun)} s`,
      )
      if (faults.length === 0) continue
      const heard = tablets.flatMap(({ person, network }) =>
        network.history().map((line) => `network of ${person.name}: ${line}`),
      )
      for (const line of [...history, ...heard, ...faults]) say(`  ${line}`)
    }
  } finally {
    for (const tablet of tablets) await tablet.throwAway()
    for (const network of networks) await network.stop()
    await shop.stop()
  }
  return tally
}

const brokenOff = (problem: unknown): RoundResult => ({
  entries: 0,
  lost: 0,
  twice: 0,
  diverged: 0,
  faults: [`the round broke off: ${problem instanceof Error ? problem.stack : String(problem)}`],
})

const secondsSince = (begun: number): string => ((performance.now() - begun) / 1000).toFixed(1)
