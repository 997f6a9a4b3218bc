import {
  pinFault,
  pinOfToday,
  readPin,
  writePin,
} from '@bayledger/reckoning/diagnosis/cases/rule-set-pin.test-support'

/**
 * `npm run cases:pin`: writes down what the rules say of every worked case under their number. Refuses
 * while a diagnosis changed and the number did not.
 */
const [pinned, today] = [readPin(), pinOfToday()]
const fault = pinFault(pinned, today)
if (fault === null) console.log(`Rule set ${today.ruleSet} is pinned already.`)
else if (fault.startsWith('The same evidence')) {
  console.error(fault)
  process.exitCode = 1
} else {
  writePin(today)
  console.log(`Pinned rule set ${today.ruleSet} by ${Object.keys(today.digests).length} cases.`)
}
