import { canonicalText } from '@bayledger/ledger/digests'
import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { inReadingOrder } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { wordedContradiction } from '@bayledger/wording/worded-diagnosis'
import { differenceWords } from '../../../words/difference-words.ts'

/** What two diagnoses of the same evidence say differently, a sentence each; empty where they say the same. */
export const differencesBetween = (issued: Diagnosis, today: Diagnosis): string[] => [
  ...(issued.primary === today.primary ? [] : [differenceWords.cause(causeWords(issued), causeWords(today))]),
  ...issued.findings.filter(isNotIn(today)).map((finding) => differenceWords.onlyThen(named(finding))),
  ...today.findings.filter(isNotIn(issued)).map((finding) => differenceWords.onlyNow(named(finding))),
  ...issued.findings.flatMap((finding) => {
    const now = today.findings.find(({ code }) => code === finding.code)
    return now ? changesOf(finding, now) : []
  }),
  ...onlyIn(issued, today).map(differenceWords.contradictionOnlyThen),
  ...onlyIn(today, issued).map(differenceWords.contradictionOnlyNow),
  ...(canonicalText(issued.unchecked) === canonicalText(today.unchecked) ? [] : [differenceWords.unchecked]),
  ...(canonicalText(checksOf(issued)) === canonicalText(checksOf(today)) ? [] : [differenceWords.nextChecks]),
]

const causeWords = ({ primary }: Diagnosis): string =>
  primary === null ? differenceWords.noCause : differenceWords.titled(english.findingTitles[primary])

const isNotIn =
  ({ findings }: Diagnosis) =>
  ({ code }: Finding): boolean =>
    findings.every((finding) => finding.code !== code)

const named = ({ code, wheels }: Finding): string =>
  wheels.length === 0 ? english.findingTitles[code] : `${english.findingTitles[code]}, ${placesOf(wheels)}`

const placesOf = (wheels: Finding['wheels']): string =>
  wheels.length === 0
    ? differenceWords.noWheel
    : inReadingOrder(wheels)
        .map((wheel) => wheelNames[wheel])
        .join(', ')

/** What differs among the facts that people act on; else whether the reasons or figures differ. */
const changesOf = (then: Finding, now: Finding): string[] => {
  const title = english.findingTitles[then.code]
  const acted = [
    ['wheels', placesOf(then.wheels), placesOf(now.wheels)],
    ['kind', then.stop ?? then.kind, now.stop ?? now.kind],
    ['confidence', then.confidence, now.confidence],
    ['offers', listed(differenceWords.offers, then.offers), listed(differenceWords.offers, now.offers)],
    ['holds', listed(differenceWords.holds, then.holds), listed(differenceWords.holds, now.holds)],
  ].filter(([, before, after]) => before !== after)
  if (acted.length > 0)
    return acted.map(([what = '', before = '', after = '']) =>
      differenceWords.changed(title, what, before, after),
    )
  return canonicalText(comparable(then, now)) === canonicalText(comparable(now, then))
    ? []
    : [differenceWords.reasons(title)]
}

const listed = <Member extends string>(
  words: Readonly<Record<Member, string>>,
  members: readonly Member[],
): string => (members.length === 0 ? differenceWords.none : members.map((member) => words[member]).join(', '))

/** The contradictions of one that the other does not have, in words. */
const onlyIn = (one: Diagnosis, other: Diagnosis): string[] =>
  one.contradictions
    .filter(({ code }) => other.contradictions.every((contradiction) => contradiction.code !== code))
    .map((contradiction) => wordedContradiction(english, contradiction).says)

/** A fact as both can hold it: what was issued in words has no codes for its reasons. */
const comparable = ({ because, asWritten, ...facts }: Finding, other: Finding): unknown =>
  asWritten === undefined && other.asWritten === undefined
    ? { ...facts, because }
    : { ...facts, because: because.map(({ field, value, unit }) => ({ field, value, unit })) }

const checksOf = ({ nextChecks }: Diagnosis): unknown =>
  nextChecks.map(({ asWritten: _words, ...facts }) => facts)
