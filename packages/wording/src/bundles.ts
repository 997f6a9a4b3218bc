import { type BundleNamed, namedBundle } from '@bayledger/ledger/questions/named'
import type { IssuedBundle } from '@bayledger/ledger/state'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { BundleTitle } from '@bayledger/reckoning/estimate'
import { isAdded, isConditional } from '@bayledger/reckoning/money/added-bundles'
import type { FindingSentences } from './findings.ts'
import { type WheelsWording, wheelList } from './wheels.ts'
import { sentenceFor } from './worded-diagnosis.ts'

/** What a language calls the bundles of an estimate. `wheels` is a list such as "left front and right rear". */
export type BundlesWording = {
  readonly titles: Readonly<Record<BundleTitle, (wheels: string) => string>>
  /** The reason for a bundle that no finding needs: the inspection itself. */
  readonly nothingToSell: string
  /** The reason for what the customer asked for, and for what the advisor added. */
  readonly asked: string
  readonly byHand: string
  /** What is asked before a stem is loosened: what a Yes and a No mean. */
  readonly ifStemBreaks: string
}

type Words = { readonly bundles: BundlesWording; readonly wheels: WheelsWording }

/** A bundle's title; a bundle that was issued in words keeps its own. */
export const bundleTitle = ({ bundles, wheels }: Words, bundle: Omit<BundleNamed, 'bundleKey'>): string =>
  bundle.asWritten ?? bundles.titles[bundle.title](wheelList(wheels, bundle.wheels))

/** Why a bundle is offered: the customer's sentence of the finding that needs it; empty if that is not known. */
export const bundleReason = (
  words: Words & { readonly findingSentences: FindingSentences },
  bundle: Pick<IssuedBundle, 'bundleKey' | 'title' | 'works' | 'findings' | 'asWritten'>,
  findings: readonly Finding[],
): string => {
  if (bundle.asWritten) return bundle.asWritten.reason
  // A hole that was seen says more of a search for a leak than the pressure that it cost.
  const code = bundle.findings.find((one) => one === 'puncture-found') ?? bundle.findings[0]
  if (code === undefined) {
    if (isConditional(bundle)) return words.bundles.ifStemBreaks
    if (!isAdded(bundle)) return words.bundles.nothingToSell
    return bundle.works.length === 0 ? words.bundles.byHand : words.bundles.asked
  }
  const own = namedBundle(bundle).wheels
  const alike = findings.filter((finding) => finding.code === code)
  const here = alike.find(({ wheels }) => wheels.some((wheel) => own.includes(wheel)))
  const finding = here ?? alike[0]
  return finding ? sentenceFor(words, finding) : ''
}
