import { differences } from '@bayledger/reckoning/diagnosis/cases/case-differences.test-support'
import { workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'

/**
 * `npm run -s check:cases`: every worked case by name, with what it is about, whether it comes out exactly, and what
 * must hold in it; ends with `N passed, N failed`.
 */
let failed = 0
for (const one of workedCases) {
  const wrong = differences(one)
  if (wrong.length > 0) failed += 1
  console.log(`${one.name}: ${one.title}: ${wrong.length === 0 ? 'passed' : 'failed'}`)
  if (one.mustHold !== null && wrong.length === 0) console.log(`  holds: ${one.mustHold}`)
  for (const words of wrong) console.log(`  ${words}`)
}
console.log(`${workedCases.length - failed} passed, ${failed} failed`)
process.exitCode = failed > 0 || workedCases.length === 0 ? 1 : 0
