import { randomFrom } from '../../../packages/reckoning/src/diagnosis/physics/random.test-support.ts'
import type { FaultKind } from './fault-kind.ts'
import { isClean, type Judged, nothingJudged, sumOf } from './judge.ts'
import type { ShopFolder } from './shop-folder.ts'

/**
 * Runs rounds of each kind, one kind after the other, each on a shop of its own; round `n` draws from `seed + n`. `say` gets a line
 * for each kind, and all that was found. A round that cannot go on is an answer that should not have been given.
 */
export const runKinds = async (
  kinds: readonly FaultKind[],
  from: ShopFolder,
  { rounds, seed }: { readonly rounds: number | null; readonly seed: number },
  say: (line: string) => void,
): Promise<Judged> => {
  let all = nothingJudged
  for (const kind of kinds) {
    const count = rounds ?? kind.rounds
    const judged = await runKind(kind, from, { rounds: count, seed }, say)
    for (const line of judged.lines) say(`  ${line}`)
    all = sumOf(all, judged)
  }
  return all
}

const everySoMany = 10

const runKind = async (
  { name, open }: FaultKind,
  from: ShopFolder,
  { rounds, seed }: { readonly rounds: number; readonly seed: number },
  say: (line: string) => void,
): Promise<Judged> => {
  const begun = performance.now()
  const stage = await open(from)
  const seconds: number[] = []
  const brokenOff: string[] = []
  try {
    for (let round = 0; round < rounds && brokenOff.length === 0; round += 1) {
      try {
        const took = await stage.round(randomFrom(seed + round))
        if (took !== null) seconds.push(took)
      } catch (error) {
        brokenOff.push(`seed ${seed + round} broke off: ${error instanceof Error ? error.stack : error}`)
      }
      if ((round + 1) % everySoMany === 0) say(`  ${name}: ${round + 1} of ${rounds}`)
    }
    const judged = await stage.judge()
    const found: Judged = {
      ...judged,
      wrongAnswers: judged.wrongAnswers + brokenOff.length,
      lines: [...brokenOff, ...judged.lines],
    }
    say(lineOf(name, found, { rounds, seed, seconds, took: (performance.now() - begun) / 1000 }))
    return found
  } finally {
    await stage.close()
  }
}

const lineOf = (
  name: string,
  judged: Judged,
  run: {
    readonly rounds: number
    readonly seed: number
    readonly seconds: readonly number[]
    readonly took: number
  },
): string => {
  const sorted = run.seconds.toSorted((one, other) => one - other)
  const at = (share: number) => (sorted[Math.floor((sorted.length - 1) * share)] ?? 0).toFixed(1)
  const ready = sorted.length === 0 ? '' : `, ready after ${at(0.5)} s (at most ${at(1)} s)`
  const { acknowledged, lost, twice, broken, wrongAnswers, messagesLost, messagesDoubled } = judged
  return [
    `${isClean(judged) ? 'holds' : 'FAILS'}  ${name}: ${run.rounds} rounds from seed ${run.seed} in ${run.took.toFixed(0)} s`,
    `acknowledged ${acknowledged}, lost ${lost}, twice ${twice}, broken ${broken}, wrong answers ${wrongAnswers}`,
    `messages lost ${messagesLost}, doubled ${messagesDoubled}${ready}`,
  ].join('; ')
}
