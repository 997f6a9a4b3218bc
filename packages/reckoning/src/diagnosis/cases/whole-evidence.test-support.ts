import type { Evidence } from '../../evidence/evidence-schema.ts'
import type { FieldCheck } from '../checks/field-check.ts'
import { suppose } from '../checks/suppose.ts'
import { uncheckedFacts } from '../checks/unchecked.ts'
import { readFacts } from '../facts/facts.ts'

/** Values for facts that change no verdict, for which no check supposes any. */
const plainValues: Readonly<Record<string, unknown>> = { 'light.reported': 'solid', strayIds: [] }

const firstValue = ({ field, suppositions }: FieldCheck, evidence: Evidence): Evidence => {
  const supposed = suppositions(readFacts(evidence))[0] ?? { [field]: plainValues[field] }
  return suppose(evidence, supposed)
}

/** The same evidence, with the first possible value for every missing fact. */
export const withEverythingChecked = (evidence: Evidence): Evidence => {
  let whole = evidence
  for (
    let left = uncheckedFacts(readFacts(whole));
    left[0] !== undefined;
    left = uncheckedFacts(readFacts(whole))
  )
    whole = firstValue(left[0], whole)
  return whole
}

/** A dozen facts of all kinds, as they are missing before a technician has gone round the vehicle. */
const dozen = [
  ...['light.behavior', 'controlModule.codes', 'surroundings.outdoor', 'surroundings.overnightLow'],
  ...['wheels.LF.gauge', 'wheels.RF.battery', 'wheels.RR.stem', 'wheels.LR.tireDamage', 'wheels.LR.valve'],
  ...['history.ourWorkOn', 'vehicle.sidewallMaximum.front', 'wheels.SP.gauge'],
]

/** The same evidence with a dozen facts unchecked; where nobody looked at a tire, no hole of it is known either. */
export const withADozenUnchecked = (evidence: Evidence): Evidence => {
  const whole = withEverythingChecked(evidence)
  const holes = whole.wheels?.LR?.punctures == null ? [] : ['wheels.LR.punctures']
  return suppose(whole, Object.fromEntries([...dozen, ...holes].map((field) => [field, null])))
}
