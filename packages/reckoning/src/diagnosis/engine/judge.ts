import type { Evidence } from '../../evidence/evidence-schema.ts'
import { type Facts, readFacts } from '../facts/facts.ts'
import { type FindingCode, groupOf } from '../finding-codes.ts'
import type { Match, Rule } from '../rule.ts'
import { explanationOf, readByExplanation } from './explanation.ts'
import { readersAmong } from './fields-read.ts'
import { precedence, rankOf } from './precedence.ts'
import { type Matches, priorFindingsOf } from './prior-findings.ts'
import { ruleOf } from './rule-of.ts'
import { suppress } from './suppression.ts'

/** A rule that applies, after suppression by the others. */
export type Judged = { readonly rule: Rule; readonly match: Match }

export type Judgment = {
  readonly facts: Facts
  readonly primary: FindingCode | null
  /** Stops first, then the primary, then by precedence. */
  readonly judged: readonly Judged[]
  /** What each rule that looks at facts alone found, in the order of `observing`, before any made another idle. */
  readonly observed: readonly (Match | null)[]
}

const rules = precedence.map(ruleOf)

/** The rules that look at facts alone. */
const observing = rules.filter((rule) => rule.concludes !== true)

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

const concluding = concludingCodes.map(ruleOf).filter((rule) => rule.concludes === true)

/**
 * Runs every rule over the evidence. Rules that look at facts alone come first and are thinned by what makes others
 * idle; then those that conclude from prior findings, in their own order.
 */
export const judge = (evidence: Evidence): Judgment => {
  const facts = readFacts(evidence)
  return conclude(
    facts,
    observing.map((rule) => rule.find(facts)),
  )
}

const readersOf = readersAmong(observing.map(({ reads }) => reads))
const concludersOf = readersAmong([...concluding.map(({ reads }) => reads), readByExplanation])

/**
 * Judges evidence that differs from evidence already judged only in the named fields: the rules that read none of
 * them keep what they found, and where none that reads them finds anything, before or now, all stays as it was. Its
 * grounds and figures are those of the earlier evidence.
 */
export const rejudge = (earlier: Judgment, evidence: Evidence, fields: readonly string[]): Judgment => {
  const readers = new Set(fields.flatMap(readersOf))
  const isConcludedFrom = fields.some((field) => concludersOf(field).length > 0)
  if (readers.size === 0 && !isConcludedFrom) return earlier
  const facts = readFacts(evidence)
  const observed = [...earlier.observed]
  let findsAnything = isConcludedFrom
  for (const reader of readers) {
    const match = observing[reader]?.find(facts) ?? null
    findsAnything ||= match !== null || observed[reader] !== null
    observed[reader] = match
  }
  return findsAnything ? conclude(facts, observed) : earlier
}

const conclude = (facts: Facts, observed: Judgment['observed']): Judgment => {
  const matches: Matches = new Map()
  observing.forEach(({ code }, index) => {
    const match = observed[index]
    if (match) matches.set(code, match)
  })
  if (matches.size > 1) suppress(matches)
  const prior = priorFindingsOf(facts, matches)
  for (const rule of concluding) {
    const match = rule.find(facts, prior)
    if (match !== null) matches.set(rule.code, match)
  }
  const primary = explanationOf(facts, prior)
  return { facts, primary, judged: ordered(matches, primary), observed }
}

const ordered = (matches: Matches, primary: FindingCode | null): Judged[] => {
  const place = (code: FindingCode): number => {
    const group = groupOf(code)
    return (group === 'stop' ? -2_000 : code === primary ? -1_000 : 0) + rankOf(code)
  }
  return [...matches]
    .sort(([one], [other]) => place(one) - place(other))
    .map(([code, match]) => ({ rule: ruleOf(code), match }))
}
