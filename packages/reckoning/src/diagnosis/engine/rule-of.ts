import type { FindingCode } from '../finding-codes.ts'
import type { Rule } from '../rule.ts'
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

const byCode = new Map<FindingCode, Rule>(
  [
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
  ].map((rule) => [rule.code, rule]),
)

export const ruleOf = (code: FindingCode): Rule => {
  const rule = byCode.get(code)
  if (rule === undefined) throw new Error(`no rule makes the finding ${code}`)
  return rule
}
