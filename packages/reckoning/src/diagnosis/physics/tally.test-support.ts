import type { Evidence } from '../../evidence/evidence-schema.ts'
import { judge } from '../engine/judge.ts'
import { findingOf } from '../finding-of.ts'
import { drawVehicle } from './draw.test-support.ts'
import { evidenceOf } from './evidence-of.test-support.ts'
import { type Expectation, expectationOf } from './expectation.test-support.ts'
import { lightOf } from './instruments.test-support.ts'
import { randomFrom } from './random.test-support.ts'
import { type Score, scoreOf } from './score.test-support.ts'
import type { Story } from './stories.test-support.ts'

/** One drawn vehicle, what was on record of it, what was right to say and how the diagnosis did. */
export type Judged = {
  readonly story: string
  readonly evidence: Evidence
  readonly expected: Expectation
  readonly score: Score
}

/** Draws vehicles story by story in turn, from one seed, and has each judged. */
export const judgeVehicles = (stories: readonly Story[], count: number, seed: number): Judged[] => {
  const random = randomFrom(seed)
  return Array.from({ length: count }, (_, index) => {
    const story = stories[index % stories.length]
    if (story === undefined) throw new Error('there are no stories')
    const { vehicle, instruments } = drawVehicle(random, story)
    const evidence = evidenceOf(vehicle, instruments, random)
    const judgment = judge(evidence)
    const findings = judgment.judged.map((judged) => findingOf(judgment, judged))
    const expected = expectationOf(vehicle, lightOf(vehicle, instruments))
    return {
      story: story.name,
      evidence,
      expected,
      score: scoreOf(expected, { primary: judgment.primary, findings }),
    }
  })
}

export type Tally = {
  readonly vehicles: number
  readonly right: number
  readonly missedStops: number
}

export const tallyOf = (judged: readonly Judged[]): Tally => ({
  vehicles: judged.length,
  right: judged.filter(({ score }) => score.wrong.length === 0).length,
  missedStops: judged.filter(({ score }) => score.missedStops.length > 0).length,
})
