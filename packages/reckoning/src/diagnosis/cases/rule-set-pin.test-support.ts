import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import * as z from 'zod/mini'
import { ruleSetVersion } from '../diagnose.ts'
import { diagnosisOf } from './diagnosed-cases.test-support.ts'
import { workedCases } from './worked-cases.test-support.ts'

/**
 * What the worked cases' diagnoses were, word for word, under a rule set's number. A diagnosis stores that number, so
 * the same number must go on meaning the same words.
 */
const Pin = z.strictObject({ ruleSet: z.string(), digests: z.record(z.string(), z.string()) })
export type Pin = z.infer<typeof Pin>

const file = new URL('../rule-set-pin.json', import.meta.url)

export const readPin = (): Pin => z.parse(Pin, JSON.parse(readFileSync(file, 'utf8')))

/** What the rules of today say. */
export const pinOfToday = (): Pin => ({
  ruleSet: ruleSetVersion,
  digests: Object.fromEntries(
    workedCases.map((one) => [
      one.name,
      createHash('sha256')
        .update(JSON.stringify(diagnosisOf(one)))
        .digest('hex')
        .slice(0, 16),
    ]),
  ),
})

export const writePin = (pin: Pin): void => writeFileSync(file, `${JSON.stringify(pin, null, 2)}\n`)

const pinAgain = 'run npm run cases:pin'

/** How the pinned diagnoses differ from what the rules say now, and what to do; null if they do not differ. */
export const pinFault = (pinned: Pin, today: Pin): string | null => {
  const changed = Object.entries(pinned.digests)
    .filter(([name, digest]) => today.digests[name] !== undefined && today.digests[name] !== digest)
    .map(([name]) => name)
  if (changed.length > 0 && pinned.ruleSet === today.ruleSet)
    return `The same evidence leads to another diagnosis in ${changed.join(', ')}, and the rule set is still number ${today.ruleSet}. Orders keep the number beside their diagnosis: raise ruleSetVersion in diagnose.ts, then ${pinAgain}. If no diagnosis was meant to change, undo what changed it.`
  const same = Object.keys(today.digests).sort().join() === Object.keys(pinned.digests).sort().join()
  if (pinned.ruleSet !== today.ruleSet || changed.length > 0 || !same)
    return `The pin is of rule set ${pinned.ruleSet} and ${Object.keys(pinned.digests).length} cases; today it is rule set ${today.ruleSet} and ${Object.keys(today.digests).length} cases: ${pinAgain}.`
  return null
}
