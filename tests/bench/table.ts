import type { Summary } from './statistics.ts'

/** One comparison inside one run. `of` says which figure the ratio and the goal are about. */
export type Line = {
  /** How the figure is called for programs; `null` where a row is only for people. */
  readonly name: string | null
  readonly what: string
  readonly against: string
  readonly ours: Summary
  readonly bare: Summary
  readonly of: 'p50' | 'p99' | 'perSecond'
  /** At most this many times as long, or for `perSecond` at least this share as many; `null`: no goal is set. */
  readonly goal: number | null
  /** At most this many milliseconds, on this machine. */
  readonly most?: { readonly p50?: number; readonly p99?: number }
  /** At least so many a second, on the machine at hand. */
  readonly least?: number
}

/** A figure that is compared with nothing of the same run. */
export type Figure = {
  readonly name: string
  readonly value: number
  readonly unit: string
  /** At most so much; `null`: no goal is set. */
  readonly goal: number | null
}

const verdict = ({ of, goal }: Line, ratio: number): string => {
  if (goal === null) return 'no goal'
  const isMet = of === 'perSecond' ? ratio >= goal : ratio <= goal
  return `${of === 'perSecond' ? 'at least' : 'at most'} ${goal}: ${isMet ? 'met' : 'missed'}`
}

const row = (line: Line): Record<string, string | number> => {
  const ratio = line.ours[line.of] / line.bare[line.of]
  return {
    what: line.what,
    'p50 ms': round(line.ours.p50),
    'p99 ms': round(line.ours.p99),
    'a second': Math.round(line.ours.perSecond),
    against: line.against,
    'its p50': round(line.bare.p50),
    'its p99': round(line.bare.p99),
    ratio: `${round(ratio)} (${line.of === 'perSecond' ? 'a second' : line.of})`,
    goal:
      [verdict(line, ratio), ...absoluteVerdicts(line)].filter((words) => words !== 'no goal').join('; ') ||
      'no goal',
  }
}

const absoluteVerdicts = ({ ours, most, least }: Line): string[] => [
  ...(['p50', 'p99'] as const).flatMap((of) => {
    const goal = most?.[of]
    return goal === undefined ? [] : [`${of} at most ${goal} ms: ${ours[of] <= goal ? 'met' : 'missed'}`]
  }),
  ...(least === undefined
    ? []
    : [`at least ${least} a second: ${ours.perSecond >= least ? 'met' : 'missed'}`]),
]

const round = (value: number): number => Number(value.toPrecision(3))

export const printTable = (lines: readonly Line[], figures: readonly Figure[]): void => {
  if (lines.length > 0) console.table(lines.map(row))
  console.table(
    figures.map(({ name, value, unit, goal }) => ({
      name,
      value: round(value),
      unit,
      goal: goal === null ? 'no goal' : `at most ${goal}: ${value <= goal ? 'met' : 'missed'}`,
    })),
  )
}

/**
 * One JSON object a line for each named figure: `value` in `unit`, `baseline` in the same unit and what `value` is
 * divided by it; `null` where a figure is compared with nothing.
 */
export const printLines = (lines: readonly Line[], figures: readonly Figure[]): void => {
  for (const { name, ours, bare, of } of lines)
    if (name !== null)
      print({
        name,
        value: round(ours[of]),
        unit: of === 'perSecond' ? 'a second' : 'ms',
        baseline: round(bare[of]),
        ratio: round(ours[of] / bare[of]),
      })
  for (const { name, value, unit } of figures)
    print({ name, value: round(value), unit, baseline: null, ratio: null })
}

const print = (line: object): void => console.log(JSON.stringify(line))
