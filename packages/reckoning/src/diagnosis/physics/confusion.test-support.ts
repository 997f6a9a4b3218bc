import { harderStories, plainStories, type Story } from './stories.test-support.ts'
import { type Judged, judgeVehicles, tallyOf } from './tally.test-support.ts'

/** The two sets of vehicles that are drawn and judged: as many as it takes to see one error in a thousand. */
export const vehicleSets = [
  { name: 'One thing wrong, or two', stories: plainStories, count: 4_000, seed: 138 },
  { name: 'The harder set', stories: harderStories, count: 5_000, seed: 141 },
] as const satisfies readonly VehicleSet[]

type VehicleSet = {
  readonly name: string
  readonly stories: readonly Story[]
  readonly count: number
  readonly seed: number
}

export const judgeSet = ({ stories, count, seed }: VehicleSet): Judged[] =>
  judgeVehicles(stories, count, seed)

/**
 * The confusion table in Markdown: for each true state how many vehicles were drawn, how many were judged right, and the
 * verdicts, most frequent first. A verdict is the primary finding, or the gravest where there is no light to explain.
 */
export const confusionTable = ({ name, stories }: VehicleSet, judged: readonly Judged[]): string[] => {
  const { vehicles, right, missedStops } = tallyOf(judged)
  return [
    `**${name}**: ${counted(right)} of ${counted(vehicles)} right (${percent(right, vehicles)}), ${missedStops} true stops missed.`,
    '',
    '| True state | Right | Verdicts |',
    '| --- | --- | --- |',
    ...stories.map((story) => {
      const own = judged.filter((one) => one.story === story.name)
      return `| ${story.name} | ${tallyOf(own).right} of ${own.length} | ${verdictsOf(own)} |`
    }),
  ]
}

const verdictsOf = (judged: readonly Judged[]): string => {
  const counts = new Map<string, number>()
  for (const { score } of judged) counts.set(score.verdict, (counts.get(score.verdict) ?? 0) + 1)
  return [...counts]
    .sort(([oneName, one], [otherName, other]) => other - one || (oneName < otherName ? -1 : 1))
    .map(([verdict, count]) => (verdict === 'nothing' ? `nothing ${count}` : `\`${verdict}\` ${count}`))
    .join(', ')
}

const counted = (count: number): string => count.toLocaleString('en-US')

/** Rounded down, so that 100.00 % means all. */
const percent = (part: number, whole: number): string =>
  `${(Math.floor((part / whole) * 10_000) / 100).toFixed(2)} %`
