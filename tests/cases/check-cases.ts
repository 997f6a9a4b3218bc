import { differences } from '@bayledger/reckoning/diagnosis/cases/case-differences.test-support'
import { workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { english } from '@bayledger/wording/en/english'
import { wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'
import { mustSay } from '@bayledger/wording/worked-case-words.test-support'

/**
 * `npm run -s check:cases`: every worked case by name, with what it is about, whether it comes out exactly, and what
 * must hold in it; ends with `N passed, N failed`.
 */
let failed = 0
for (const one of workedCases) {
  const diagnosis = diagnose(one.evidence)
  const says = mustSay[one.name]?.(wordedDiagnosis(english, diagnosis)) ?? true
  const wrong = [...differences(one, diagnosis), ...(says ? [] : [`is not said: ${one.mustHold}`])]
  if (wrong.length > 0) failed += 1
  console.log(`${one.name}: ${one.title}: ${wrong.length === 0 ? 'passed' : 'failed'}`)
  if (one.mustHold !== null && wrong.length === 0) console.log(`  holds: ${one.mustHold}`)
  for (const words of wrong) console.log(`  ${words}`)
}
console.log(`${workedCases.length - failed} passed, ${failed} failed`)
process.exitCode = failed > 0 || workedCases.length === 0 ? 1 : 0
