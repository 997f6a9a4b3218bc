import type { WheelPosition } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import { type FindingCode, groupOf } from '../finding-codes.ts'
import type { Match, PriorFindings } from '../rule.ts'
import { explanationOf } from './explanation.ts'

export type Matches = Map<FindingCode, Match>

/** What has been found so far. It reads the live map: the next rule sees a match that is added later. */
export const priorFindingsOf = (facts: Facts, matches: Matches): PriorFindings => {
  const wheelsOf = (code: FindingCode): readonly WheelPosition[] => matches.get(code)?.wheels ?? []
  const has = (code: FindingCode, wheel?: WheelPosition): boolean =>
    matches.has(code) && (wheel === undefined || wheelsOf(code).includes(wheel))
  const codes = (): FindingCode[] => [...matches.keys()]
  return {
    has,
    wheelsOf,
    codes,
    codesOn: (wheel) => codes().filter((code) => wheelsOf(code).includes(wheel)),
    explained: () => explanationOf(facts, { has, wheelsOf }) !== null,
    askOpen: () => codes().some((code) => groupOf(code) === 'ask'),
  }
}
