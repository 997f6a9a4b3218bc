import type { Bar } from '@bayledger/contract/numbers'

/** Under this many a share is said in numbers: a percentage of three orders says more than is known. */
const leastForPercent = 10

/** Under this many the halves of some times are no more than the times themselves. */
const leastForHalves = 4

/** Tenths of a minute are read below ten: above, they say more than is known. */
const shownMinutes = (minutes: number): number => (minutes < 10 ? minutes : Math.round(minutes))

/** "12", "3 of 4", "68 % of 25", "14 min, half of 8 from 11 to 19": what a bar shows, in words. */
export const barWords = ({ count, of, minutes }: Bar): string => {
  if (minutes !== null) {
    const [middle, from, until] = [minutes.middle, minutes.from, minutes.until].map(shownMinutes)
    if (count < leastForHalves) return `${middle} min, seen ${count === 1 ? 'once' : `${count} times`}`
    return `${middle} min, half of ${count} from ${from} to ${until}`
  }
  return of === null ? String(count) : shareWords(count, of)
}

/** "3 of 4", and from ten on "68 % of 25". */
export const shareWords = (count: number, of: number): string =>
  of < leastForPercent ? `${count} of ${of}` : `${Math.round((100 * count) / of)} % of ${of}`

/** What the ready times of a range were worth, in a sentence. */
export const errorWords = ({
  count,
  medianMinutes,
  within15,
}: {
  readonly count: number
  readonly medianMinutes: number | null
  readonly within15: number
}): string =>
  medianMinutes === null
    ? 'No order of these days had work after a Yes.'
    : `Half of them were off by ${Math.round(medianMinutes)} min or less; ${shareWords(within15, count)} by 15 min or less.`

/** How long a bar is and where its line of halves lies, as parts of the longest one. */
export const barLengths = (
  bars: readonly Bar[],
): readonly {
  readonly bar: number
  readonly line: { readonly from: number; readonly until: number } | null
}[] => {
  const lengthOf = ({ count, of, minutes }: Bar) =>
    minutes !== null ? minutes.middle : of === null ? count : count / Math.max(1, of)
  // A share is drawn against the whole; the rest against the longest.
  const longest = bars.some(({ of }) => of !== null)
    ? 1
    : Math.max(...bars.map((bar) => Math.max(lengthOf(bar), bar.minutes?.until ?? 0)), 0)
  const part = (value: number) => (longest === 0 ? 0 : value / longest)
  return bars.map((bar) => ({
    bar: part(lengthOf(bar)),
    line: bar.minutes === null ? null : { from: part(bar.minutes.from), until: part(bar.minutes.until) },
  }))
}
