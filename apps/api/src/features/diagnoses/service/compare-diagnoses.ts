import { canonicalText } from '@bayledger/ledger/hash-chain'
import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { inReadingOrder, wheelNames } from '@bayledger/reckoning/wheels'
import { findingTitles } from '@bayledger/wording/en/finding-titles'

/** What two diagnoses of the same evidence say differently, a sentence each; empty where they say the same. */
export const differencesBetween = (issued: Diagnosis, today: Diagnosis): string[] => [
  ...(issued.primary === today.primary
    ? []
    : [`The cause was ${causeWords(issued)}; today it is ${causeWords(today)}.`]),
  ...issued.findings.filter(isNotIn(today)).map((finding) => `No longer found today: ${named(finding)}.`),
  ...today.findings.filter(isNotIn(issued)).map((finding) => `Found today only: ${named(finding)}.`),
  ...issued.findings.flatMap((finding) => {
    const now = today.findings.find(({ code }) => code === finding.code)
    return now ? changesOf(finding, now) : []
  }),
  ...unsaid(issued, today).map((says) => `No longer a contradiction today: ${says}`),
  ...unsaid(today, issued).map((says) => `A contradiction today only: ${says}`),
  ...(canonicalText(issued.unchecked) === canonicalText(today.unchecked)
    ? []
    : ['What counts as not checked differs.']),
  ...(canonicalText(issued.nextChecks) === canonicalText(today.nextChecks)
    ? []
    : ['What is worth checking next differs.']),
]

const causeWords = ({ primary }: Diagnosis): string =>
  primary === null ? 'not named' : `“${findingTitles[primary]}”`

const isNotIn =
  ({ findings }: Diagnosis) =>
  ({ code }: Finding): boolean =>
    findings.every((finding) => finding.code !== code)

const named = ({ code, wheels }: Finding): string =>
  wheels.length === 0 ? findingTitles[code] : `${findingTitles[code]}, ${placesOf(wheels)}`

const placesOf = (wheels: Finding['wheels']): string =>
  wheels.length === 0
    ? 'no wheel'
    : inReadingOrder(wheels)
        .map((wheel) => wheelNames[wheel])
        .join(', ')

/** The first that differs of what people act on; then the words, which nobody acts on differently. */
const changesOf = (then: Finding, now: Finding): string[] => {
  const title = findingTitles[then.code]
  const acted = [
    ['wheels', placesOf(then.wheels), placesOf(now.wheels)],
    ['kind', then.stop ?? then.kind, now.stop ?? now.kind],
    ['confidence', then.confidence, now.confidence],
    ['offers', listed(then.offers), listed(now.offers)],
    ['holds', listed(then.holds), listed(now.holds)],
  ].filter(([, before, after]) => before !== after)
  if (acted.length > 0)
    return acted.map(([what, before, after]) => `${title}, ${what}: was ${before}; today ${after}.`)
  return canonicalText(then) === canonicalText(now)
    ? []
    : [`${title}: the words differ, what follows does not.`]
}

const listed = (members: readonly string[]): string =>
  members.length === 0 ? 'none' : members.map((member) => member.replaceAll('-', ' ')).join(', ')

const unsaid = (one: Diagnosis, other: Diagnosis): string[] =>
  one.contradictions
    .filter(({ says }) => other.contradictions.every((contradiction) => contradiction.says !== says))
    .map(({ says }) => says)
