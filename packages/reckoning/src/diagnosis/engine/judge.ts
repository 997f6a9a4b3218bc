import type { Evidence } from '../../evidence/evidence-schema.ts'
import type { WheelPosition } from '../../wheels.ts'
import { type Facts, readFacts } from '../facts/facts.ts'
import { type FindingCode, groupOf } from '../finding-codes.ts'
import type { Match, Rule, Standing } from '../rule.ts'
import { ruleOf } from './all-rules.ts'
import { explanationOf } from './explanation.ts'
import { precedence, rankOf } from './precedence.ts'
import { suppress } from './suppression.ts'

/** A rule that stands after all others had their say. */
export type Judged = { readonly rule: Rule; readonly match: Match }

export type Judgment = {
  readonly facts: Facts
  readonly primary: FindingCode | null
  /** Stops first, then the primary, then by precedence. */
  readonly judged: readonly Judged[]
}

/**
 * Runs every rule over the evidence. Rules that look at facts alone come first and are thinned by what makes
 * others idle; then those that conclude from what stands, in the order below.
 */
export const judge = (evidence: Evidence): Judgment => {
  const facts = readFacts(evidence)
  const matches = new Map<FindingCode, Match>()
  for (const rule of observing) {
    const match = rule.find(facts)
    if (match !== null) matches.set(rule.code, match)
  }
  const left = suppress(new Map([...matches].map(([code, match]) => [code, match.wheels])))
  for (const [code, match] of matches) {
    const wheels = left.get(code)
    if (wheels === undefined) matches.delete(code)
    else if (wheels.length < match.wheels.length) matches.set(code, { ...match, wheels })
  }
  for (const rule of concluding) {
    const match = rule.find(facts, standingOf(facts, matches))
    if (match !== null) matches.set(rule.code, match)
  }
  const primary = explanationOf(facts, standingOf(facts, matches))
  return { facts, primary, judged: ordered(matches, primary) }
}

const observing = precedence.map((code) => ruleOf(code)).filter((rule) => rule.concludes !== true)

/** Later ones rest on earlier ones: interference is likelier beside an unexplained fault, advice comes last. */
const concludingCodes = [
  'malfunction-unexplained',
  'warning-unexplained',
  'interference-suspected',
  'collision-corner',
  'set-of-four-worth-offering',
  'sensors-near-usual-life',
  'comeback',
  'nothing-found-today',
] as const satisfies readonly FindingCode[]

const concluding = concludingCodes.map((code) => ruleOf(code)).filter((rule) => rule.concludes === true)

const standingOf = (facts: Facts, matches: ReadonlyMap<FindingCode, Match>): Standing => {
  const wheelsOf = (code: FindingCode): readonly WheelPosition[] => matches.get(code)?.wheels ?? []
  const has = (code: FindingCode, wheel?: WheelPosition): boolean =>
    matches.has(code) && (wheel === undefined || wheelsOf(code).includes(wheel))
  const codes = [...matches.keys()]
  return {
    has,
    wheelsOf,
    codes,
    codesOn: (wheel) => codes.filter((code) => wheelsOf(code).includes(wheel)),
    get explained() {
      return explanationOf(facts, { has, wheelsOf }) !== null
    },
    askOpen: codes.some((code) => groupOf(code) === 'ask'),
  }
}

const ordered = (matches: ReadonlyMap<FindingCode, Match>, primary: FindingCode | null): Judged[] => {
  const place = (code: FindingCode): number => {
    const group = groupOf(code)
    return (group === 'stop' ? -2_000 : code === primary ? -1_000 : 0) + rankOf(code)
  }
  return [...matches]
    .sort(([one], [other]) => place(one) - place(other))
    .map(([code, match]) => ({ rule: ruleOf(code), match }))
}
