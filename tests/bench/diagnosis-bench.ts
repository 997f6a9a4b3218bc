import {
  withADozenUnchecked,
  withEverythingChecked,
} from '@bayledger/reckoning/diagnosis/cases/whole-evidence.test-support'
import { tradeCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { type Evidence, parseEvidence } from '@bayledger/reckoning/evidence/evidence'
import { interleave } from './interleave.ts'
import type { Line } from './table.ts'

/** All worked cases in turn, with everything checked and with a dozen facts still to be checked. */
export const benchDiagnosis = async (): Promise<Line[]> => {
  const whole = tradeCases.map(({ evidence }) => asParsed(withEverythingChecked(evidence)))
  const dozen = tradeCases
    .map(({ evidence }) => asParsed(withADozenUnchecked(evidence)))
    .filter((evidence) => diagnose(evidence).unchecked.length >= 12)
  const common = { against: 'JSON.parse of the same', goal: null } as const
  const wholeTimes = await timesOf(whole, { blocks: 40, block: 500, seconds: 8 })
  const dozenTimes = await timesOf(dozen, { blocks: 40, block: 20, seconds: 8 })
  return [
    {
      ...common,
      name: 'diagnose.median.ms',
      what: `diagnose ${whole.length} cases in turn, everything checked`,
      ...wholeTimes,
      of: 'p50',
      most: { p50: 0.05, p99: 0.5 },
    },
    {
      ...common,
      name: null,
      what: `the same with 12 facts unchecked, ${dozen.length} cases`,
      ...dozenTimes,
      of: 'p50',
      most: { p50: 10 },
    },
  ]
}

/** Evidence as it comes from the edge, where it was read and parsed once. */
const asParsed = (evidence: Evidence): Evidence => {
  const parsed = parseEvidence(JSON.parse(JSON.stringify(evidence)))
  if (!parsed.ok) throw new Error(`evidence that cannot be: ${JSON.stringify(parsed.faults)}`)
  return parsed.evidence
}

const timesOf = (all: readonly Evidence[], bounds: Parameters<typeof interleave>[2]) => {
  const texts = all.map((evidence) => JSON.stringify(evidence))
  const diagnoseNext = inTurn(all, diagnose)
  // A service that runs has its code compiled; one that just started has not.
  const warm = performance.now() + 2_000
  while (performance.now() < warm) diagnoseNext()
  return interleave(
    diagnoseNext,
    inTurn(texts, (text) => JSON.parse(text)),
    bounds,
  )
}

const inTurn = <One>(all: readonly One[], work: (one: One) => unknown): (() => unknown) => {
  let next = 0
  return () => {
    const one = all[next % all.length]
    next += 1
    if (one === undefined) throw new Error('there are no cases')
    return work(one)
  }
}
