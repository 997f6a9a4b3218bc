import { FindingCode } from '../finding-codes.ts'
import type { Rule, RuleBook } from '../rule.ts'
import { airLossRules } from '../rules/air-loss.ts'
import { allTiresRules } from '../rules/all-tires.ts'
import { askRules } from '../rules/ask.ts'
import { historyAndAdviceRules } from '../rules/history-and-advice.ts'
import { identityRules } from '../rules/identity.ts'
import { oneTireRules } from '../rules/one-tire.ts'
import { sensorFitRules } from '../rules/sensor-fit.ts'
import { sensorPresenceRules } from '../rules/sensor-presence.ts'
import { sensorReadingRules } from '../rules/sensor-reading.ts'
import { stopRules } from '../rules/stop.ts'
import { surroundingsRules } from '../rules/surroundings.ts'
import { systemRules } from '../rules/system.ts'
import { vehicleRules } from '../rules/vehicle.ts'

const book: RuleBook = {
  ...stopRules,
  ...askRules,
  ...systemRules,
  ...oneTireRules,
  ...airLossRules,
  ...allTiresRules,
  ...sensorPresenceRules,
  ...sensorReadingRules,
  ...sensorFitRules,
  ...identityRules,
  ...vehicleRules,
  ...surroundingsRules,
  ...historyAndAdviceRules,
}

const rules = Object.fromEntries(FindingCode.options.map((code) => [code, { ...book[code], code }])) as {
  readonly [Code in FindingCode]: Rule
}

/** The rule that makes a finding. */
export const ruleOf = (code: FindingCode): Rule => rules[code]
