import type { Evidence } from '../../evidence/evidence-schema.ts'
import type { WheelPosition } from '../../wheels.ts'
import { type Facts, readFacts } from '../facts/facts.ts'
import { type FindingCode, groupOf } from '../finding-codes.ts'
import type { Match, Rule, Standing } from '../rule.ts'
import { explanationOf } from './explanation.ts'
import { readersAmong } from './fields-read.ts'
import { precedence, rankOf } from './precedence.ts'
import { ruleOf } from './rule-of.ts'
import { suppress } from './suppression.ts'

/** A rule that stands after all others had their say. */
export type Judged = { readonly rule: Rule; readonly match: Match }

export type Judgment = {
  readonly facts: Facts
  readonly primary: FindingCode | null
  /** Stops first, then the primary, then by precedence. */
  readonly judged: readonly Judged[]
  /** What each rule that looks at facts alone found, before any made another idle. */
  readonly observed: Observed
}

type Observed = ReadonlyMap<FindingCode, Match | null>

/**
 * Runs every rule over the evidence. Rules that look at facts alone come first and are thinned by what makes
 * others idle; then those that conclude from what stands, in the order below.
 */
export const judge = (evidence: Evidence): Judgment => {
  const facts = readFacts(evidence)
  return conclude(facts, new Map(observing.map((rule) => [rule.code, rule.find(facts)])))
}

/**
 * Judges evidence that differs from evidence already judged only in the named fields: the rules that read none of
 * them keep what they found. Its grounds and figures are those of the earlier evidence.
 */
export const rejudge = (earlier: Judgment, evidence: Evidence, fields: readonly string[]): Judgment => {
  const facts = readFacts(evidence)
  const observed = new Map(earlier.observed)
  for (const rule of new Set(fields.flatMap((field) => [...readersOf(field)]))) {
    if (rule.concludes !== true) observed.set(rule.code, rule.find(facts))
  }
  return conclude(facts, observed)
}

const conclude = (facts: Facts, observed: Observed): Judgment => {
  const matches = thinned(observed)
  for (const rule of concluding) {
    const match = rule.find(facts, standingOf(facts, matches))
    if (match !== null) matches.set(rule.code, match)
  }
  const primary = explanationOf(facts, standingOf(facts, matches))
  return { facts, primary, judged: ordered(matches, primary), observed }
}

const thinned = (observed: Observed): Map<FindingCode, Match> => {
  const found = new Map(
    [...observed].flatMap(([code, match]) => (match === null ? [] : [[code, match] as const])),
  )
  const left = suppress(new Map([...found].map(([code, match]) => [code, match.wheels])))
  return new Map(
    [...found].flatMap(([code, match]) => {
      const wheels = left.get(code)
      return wheels === undefined ? [] : [[code, { ...match, wheels }] as const]
    }),
  )
}

const observing = precedence.map((code) => ruleOf(code)).filter((rule) => rule.concludes !== true)

const readersOf = readersAmong(observing)

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
