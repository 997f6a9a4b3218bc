import { type Summary, summarize } from './statistics.ts'

export type Work = () => unknown

/**
 * Runs ours and bare in turn, block by block, so that whatever else the machine does burdens both alike. The first
 * block only warms up. Bounded by count and by time.
 */
export const interleave = async (
  ours: Work,
  bare: Work,
  bounds: { readonly blocks: number; readonly block: number; readonly seconds: number },
): Promise<{ readonly ours: Summary; readonly bare: Summary }> => {
  const times: { readonly ours: number[]; readonly bare: number[] } = { ours: [], bare: [] }
  const end = performance.now() + bounds.seconds * 1000
  for (let block = 0; block <= bounds.blocks && (block < 2 || performance.now() < end); block += 1)
    for (const [side, work] of [
      ['ours', ours],
      ['bare', bare],
    ] as const)
      for (let run = 0; run < bounds.block; run += 1) {
        const begun = performance.now()
        await work()
        if (block > 0) times[side].push(performance.now() - begun)
      }
  return { ours: summarize(times.ours), bare: summarize(times.bare) }
}

/**
 * Runs the work of all of our clients at the same time, then that of all bare ones, and again, each for so many
 * milliseconds a round. The first round only warms up.
 */
export const alternate = async (
  ours: readonly Work[],
  bare: readonly Work[],
  bounds: { readonly rounds: number; readonly milliseconds: number },
): Promise<{ readonly ours: Summary; readonly bare: Summary }> => {
  const sides = { ours: { work: ours, times: [], elapsed: 0 }, bare: { work: bare, times: [], elapsed: 0 } }
  const both: { readonly work: readonly Work[]; times: number[]; elapsed: number }[] = Object.values(sides)
  for (let round = 0; round <= bounds.rounds; round += 1)
    for (const side of both) {
      const { times, elapsed } = await allAtOnce(side.work, bounds.milliseconds)
      if (round === 0) continue
      side.times.push(...times)
      side.elapsed += elapsed
    }
  return {
    ours: summarize(sides.ours.times, sides.ours.elapsed),
    bare: summarize(sides.bare.times, sides.bare.elapsed),
  }
}

const allAtOnce = async (works: readonly Work[], milliseconds: number) => {
  const begun = performance.now()
  const times = await Promise.all(
    works.map(async (work) => {
      const mine: number[] = []
      for (let start = begun; start < begun + milliseconds; ) {
        await work()
        const end = performance.now()
        mine.push(end - start)
        start = end
      }
      return mine
    }),
  )
  return { times: times.flat(), elapsed: performance.now() - begun }
}
