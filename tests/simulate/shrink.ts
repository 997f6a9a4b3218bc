/**
 * A shortest list of which the failure is left: no part of it of any size that was tried, down to a single one, can be left
 * out or, longer parts, be replaced by what `inPlaceOf` gives. Halves first, then ever smaller parts (delta debugging:
 * Zeller and Hildebrandt, "Simplifying and Isolating Failure-Inducing Input", IEEE Transactions on Software Engineering
 * 28(2), 2002; from memory).
 */
export const shrink = async <T>(
  failing: readonly T[],
  stillFails: (shorter: readonly T[]) => Promise<boolean>,
  {
    progress = () => undefined,
    inPlaceOf = () => [],
  }: {
    readonly progress?: (length: number) => void
    readonly inPlaceOf?: (part: readonly T[]) => readonly T[]
  } = {},
): Promise<readonly T[]> => {
  let list = failing
  let size = Math.ceil(list.length / 2)
  const tryIn = async (start: number, end: number): Promise<boolean> => {
    const part = list.slice(start, end)
    const shorter = [[], inPlaceOf(part)].filter(
      ({ length }, index) => length < part.length && (index === 0 || length > 0),
    )
    for (const put of shorter) {
      const candidate = [...list.slice(0, start), ...put, ...list.slice(end)]
      if (!(await stillFails(candidate))) continue
      list = candidate
      progress(list.length)
      return true
    }
    return false
  }
  while (size >= 1) {
    let isShorter = false
    for (let end = list.length; end > 0; end = Math.max(0, end - size))
      if (await tryIn(Math.max(0, end - size), end)) isShorter = true
    // After single ones were left out, earlier ones may have become needless.
    if (size > 1) size = Math.ceil(size / 2)
    else if (!isShorter) return list
  }
  return list
}
