import type { FindingCode, NextCheck } from '../diagnosis.ts'
import { type Judgment, rejudge } from '../engine/judge.ts'
import { rankOf } from '../engine/precedence.ts'
import { groupOf } from '../finding-codes.ts'
import type { FieldCheck, Supposition } from './field-check.ts'
import { suppose } from './suppose.ts'

/**
 * What to check next, and why: for each unchecked fact the rules are run again with each value that it could
 * plausibly have. What leads to more different verdicts comes first, then what takes fewer seconds. A fact that
 * changes no verdict is left out.
 */
export const nextChecksOf = (judgment: Judgment, unchecked: readonly FieldCheck[]): NextCheck[] =>
  unchecked
    .flatMap((check): NextCheck[] => {
      const outcomes = check
        .suppositions(judgment.facts)
        .map((supposition) => outcomeOf(judgment, supposition))
      const verdicts = new Set(outcomes.map(verdictOf)).size
      if (verdicts < 2) return []
      const { field, seconds } = check
      return [{ field, couldChange: codesThatDiffer(outcomes), verdicts, seconds }]
    })
    .sort((one, other) => other.verdicts - one.verdicts || one.seconds - other.seconds)

const outcomeOf = (judgment: Judgment, supposition: Supposition): Judgment =>
  rejudge(judgment, suppose(judgment.facts.evidence, supposition), Object.keys(supposition))

/** What the shop would do differently: the cause it names, what it forbids, what it offers. */
const verdictOf = ({ primary, judged }: Judgment): string => {
  const stops: string[] = []
  const offers: string[] = []
  for (const { rule, match } of judged) {
    const wheels = match.wheels.join('+')
    if (groupOf(rule.code) === 'stop') stops.push(`${rule.code}@${wheels}`)
    for (const offer of match.offers ?? rule.offers) offers.push(`${offer}@${wheels}`)
  }
  return [primary ?? 'none', ...stops.sort(), '|', ...[...new Set(offers)].sort()].join(' ')
}

const codesThatDiffer = (outcomes: readonly Judgment[]): FindingCode[] => {
  const seen = new Map<FindingCode, string[]>()
  for (const { judged } of outcomes) {
    for (const { rule, match } of judged) {
      seen.set(rule.code, [...(seen.get(rule.code) ?? []), match.wheels.join('+')])
    }
  }
  return [...seen]
    .filter(([, wheels]) => wheels.length < outcomes.length || new Set(wheels).size > 1)
    .map(([code]) => code)
    .sort((one, other) => rankOf(one) - rankOf(other))
}
