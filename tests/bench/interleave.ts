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

/** Runs the work of every client at the same time, each `each` times; the first tenth only warms up. */
export const sideBySide = async (clients: readonly Work[], each: number): Promise<Summary> => {
  const run = async (count: number): Promise<{ readonly times: number[]; readonly elapsed: number }> => {
    const begun = performance.now()
    const times = await Promise.all(
      clients.map(async (work) => {
        const mine: number[] = []
        for (let index = 0; index < count; index += 1) {
          const start = performance.now()
          await work()
          mine.push(performance.now() - start)
        }
        return mine
      }),
    )
    return { times: times.flat(), elapsed: performance.now() - begun }
  }
  await run(Math.ceil(each / 10))
  const { times, elapsed } = await run(each)
  return summarize(times, elapsed)
}
