import { readingOrder } from '../../wheels.ts'
import type { FindingCode, NextCheck } from '../diagnosis.ts'
import { type Judgment, rejudge } from '../engine/judge.ts'
import { rankOf } from '../engine/precedence.ts'
import { unsupportedGauges } from '../facts/unsupported-gauge.ts'
import { groupOf } from '../finding-codes.ts'
import { allChecks } from './all-checks.ts'
import type { FieldCheck, Supposition } from './field-check.ts'
import { suppose } from './suppose.ts'

/**
 * What to check next, and why: for each unchecked fact the rules are run again with each value that it could
 * plausibly have. What leads to more different verdicts comes first, then what is at a wheel of which something was
 * found, then what takes fewer seconds. A fact that changes no verdict is left out, and what one look answers for
 * all wheels is one question. A gauge value that no sensor supports is read again before all else.
 */
export const nextChecksOf = (judgment: Judgment, unchecked: readonly FieldCheck[]): NextCheck[] => {
  const { facts, judged } = judgment
  const again = unsupportedGauges(facts).map(({ position }) => `wheels.${position}.gauge`)
  const named = new Set(judged.flatMap(({ match }) => match.wheels))
  const isAtNamedWheel = (field: string): boolean =>
    readingOrder.some((position) => named.has(position) && field.startsWith(`wheels.${position}.`))
  const checks = [...allChecks.filter(({ field }) => again.includes(field)), ...unchecked]
    .filter((check) => check.isWorthIt?.(facts) ?? true)
    .flatMap((check): (NextCheck & { readonly place: number })[] => {
      const outcomes = check.suppositions(facts).map((supposition) => outcomeOf(judgment, supposition))
      const verdicts = new Set(outcomes.map(verdictOf)).size
      const { field, seconds } = check
      if (verdicts < 2 && !again.includes(field)) return []
      const place = again.includes(field) ? -1 : isAtNamedWheel(field) ? 0 : 1
      return [{ field, couldChange: codesThatDiffer(outcomes), verdicts, seconds, place }]
    })
  // A look at several wheels is as informative as at the best of them, and begins where something was found.
  const most = new Map<string, number>()
  for (const { field, verdicts } of checks)
    most.set(memberOf(field), Math.max(verdicts, most.get(memberOf(field)) ?? 0))
  const telling = ({ field }: NextCheck): number => most.get(memberOf(field)) ?? 0
  return checks
    .sort(
      (one, other) =>
        Math.min(one.place, 0) - Math.min(other.place, 0) ||
        telling(other) - telling(one) ||
        one.place - other.place ||
        other.verdicts - one.verdicts ||
        one.seconds - other.seconds,
    )
    .map(({ place: _place, ...check }) => check)
    .filter(
      ({ field }, index, all) => !isOneLook(field) || all.findIndex((one) => isOneLook(one.field)) === index,
    )
}

/** A field of a wheel without the wheel: the same fact at any of them. */
const memberOf = (field: string): string => field.replace(/^wheels\.[A-Z]{2}\./, 'wheels.')

/** Whether the temporary spare is on the vehicle, and where, shows at one look. */
const isOneLook = (field: string): boolean => field.endsWith('.mounted')

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
