import { bundleMoney, estimateMoney, type MoneySides } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { IssuedEstimate } from '@bayledger/ledger/state'
import type { BundleMoney } from '@bayledger/reckoning/estimate'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import { bundleReason, bundleTitle } from './bundles.ts'
import { cautionWords } from './customer-cautions.ts'
import { lineWords } from './estimate-lines.ts'
import type { Language } from './language.ts'
import { coverNote, coverSentence } from './line-covers.ts'

/** A bundle as a customer reads it; money in cents. */
export type ShownBundle = {
  readonly bundleKey: string
  readonly title: string
  readonly reason: string
  readonly alternativeTo: string | null
  /** Only for a case that may never come: nothing of it is in a total. */
  readonly conditional: boolean
  readonly lines: readonly {
    readonly lineKey: string
    readonly words: string
    readonly amountCents: number
    /** On a comeback: whether the warranty covers it, until when, and why not. */
    readonly cover?: string
  }[]
  /** On a comeback: how much of it the warranty covers, and why the rest is not covered. */
  readonly coverNote?: string
  readonly taxCents: number
  readonly totalCents: number
  readonly cautions: readonly { readonly number: string; readonly version: number; readonly words: string }[]
}

/** One version of an estimate, words and amounts, as a customer decides on it: kept with the answers as it was shown. */
export type ShownEstimate = {
  readonly language: Language['code']
  readonly revision: number
  readonly bundles: readonly ShownBundle[]
  readonly totalCents: number
}

type Words = Pick<
  Language,
  'code' | 'bundles' | 'customerCautions' | 'estimateLines' | 'findingSentences' | 'lineCovers' | 'wheels'
>

/** A bundle's title; of what was added by hand also its own words, because the title alone says little. */
export const shownTitle = (
  words: Pick<Language, 'bundles' | 'estimateLines' | 'wheels'>,
  bundle: Parameters<typeof namedBundle>[0],
  { lines }: Pick<BundleMoney, 'lines'>,
): string => {
  const title = bundleTitle(words, namedBundle(bundle))
  const [first] = lines
  const isByHand = bundle.title === 'by-hand' || bundle.title === 'outside-work'
  return isByHand && first ? `${title}: ${lineWords(words.estimateLines, first)}` : title
}

/** A field that is left out where there is nothing to say, so that what was shown before keeps its digest. */
const given = <Name extends string>(name: Name, value: string | null) =>
  (value === null ? {} : { [name]: value }) as { readonly [Key in Name]?: string }

/** An issued version in words and amounts; `null` where any of its money was withheld or erased. */
export const shownEstimate = (
  words: Words,
  { scope, findings }: Pick<IssuedEstimate, 'scope' | 'findings'>,
  sides: MoneySides,
): ShownEstimate | null => {
  const whole = estimateMoney(sides, scope.money)
  const bundles = scope.bundles.flatMap((bundle): ShownBundle[] => {
    const money = bundleMoney(sides, bundle.money)
    if (!money) return []
    return [
      {
        bundleKey: bundle.bundleKey,
        title: shownTitle(words, bundle, money),
        reason: bundleReason(words, bundle, findings),
        alternativeTo: bundle.alternativeTo,
        conditional: isConditional(bundle),
        lines: money.lines.map((line) => ({
          lineKey: line.lineKey,
          words: lineWords(words.estimateLines, line),
          amountCents: line.amountCents,
          ...given('cover', coverSentence(words.lineCovers, line, bundle.covers)),
        })),
        ...given('coverNote', coverNote(words.lineCovers, money.lines, bundle.covers)),
        taxCents: money.totals.taxCents,
        totalCents: money.totals.totalCents,
        cautions: bundle.cautions.map((caution) => ({
          ...caution,
          words: cautionWords(words.customerCautions, caution) ?? caution.number,
        })),
      },
    ]
  })
  return whole && bundles.length === scope.bundles.length
    ? { language: words.code, revision: scope.revision, bundles, totalCents: whole.totals.totalCents }
    : null
}
