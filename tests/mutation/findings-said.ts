import { workedCases } from '../../packages/reckoning/src/diagnosis/cases/worked-cases.test-support.ts'
import { uncheckedFacts } from '../../packages/reckoning/src/diagnosis/checks/unchecked.ts'
import { contradictionsOf } from '../../packages/reckoning/src/diagnosis/contradictions.ts'
import { judge } from '../../packages/reckoning/src/diagnosis/engine/judge.ts'
import { findingOf } from '../../packages/reckoning/src/diagnosis/finding-of.ts'

/** What is found in each worked case, word for word, without what to check next, which takes ten times as long. */
export const findingsSaid = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    workedCases.map(({ name, evidence }) => {
      const judgment = judge(evidence)
      return [
        name,
        JSON.stringify({
          primary: judgment.primary,
          findings: judgment.judged.map((judged) => findingOf(judgment, judged)),
          contradictions: contradictionsOf(judgment),
          unchecked: uncheckedFacts(judgment.facts).map(({ field }) => field),
        }),
      ]
    }),
  )
