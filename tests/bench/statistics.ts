/** The share `part` (0 to 1) of the times that are not longer than the result, in the times' own unit. */
export const quantile = (times: readonly number[], part: number): number => {
  if (times.length === 0) throw new RangeError('no times, no quantile')
  const sorted = [...times].sort((one, other) => one - other)
  return sorted[Math.min(sorted.length - 1, Math.ceil(part * sorted.length) - 1)] ?? 0
}

/** Runs something `count` times, one after the other, and gives each run's milliseconds. */
export const timesOf = async (count: number, run: (index: number) => unknown): Promise<number[]> => {
  const times: number[] = []
  for (let index = 0; index < count; index += 1) {
    const begun = performance.now()
    await run(index)
    times.push(performance.now() - begun)
  }
  return times
}
