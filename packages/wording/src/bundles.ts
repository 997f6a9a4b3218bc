import { type BundleNamed, namedBundle } from '@bayledger/ledger/questions/named'
import type { IssuedBundle } from '@bayledger/ledger/state'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { BundleTitle } from '@bayledger/reckoning/estimate'
import type { FindingSentences } from './findings.ts'
import { type WheelsWording, wheelList } from './wheels.ts'
import { sentenceFor } from './worded-diagnosis.ts'

/** How a language calls the bundles of an estimate. `wheels` is a list such as "left front and right rear". */
export type BundlesWording = {
  readonly titles: Readonly<Record<BundleTitle, (wheels: string) => string>>
  /** The reason of a bundle that no finding asks for: the look itself. */
  readonly nothingToSell: string
}

type Words = { readonly bundles: BundlesWording; readonly wheels: WheelsWording }

/** A bundle's title; one that was issued in words keeps those. */
export const bundleTitle = ({ bundles, wheels }: Words, bundle: Omit<BundleNamed, 'bundleKey'>): string =>
  bundle.asWritten ?? bundles.titles[bundle.title](wheelList(wheels, bundle.wheels))

/** Why a bundle is offered: what the customer is told of the finding that asks for it; empty where that is not known. */
export const bundleReason = (
  words: Words & { readonly findingSentences: FindingSentences },
  bundle: Pick<IssuedBundle, 'bundleKey' | 'title' | 'works' | 'findings' | 'asWritten'>,
  findings: readonly Finding[],
): string => {
  if (bundle.asWritten) return bundle.asWritten.reason
  const [code] = bundle.findings
  if (code === undefined) return words.bundles.nothingToSell
  const own = namedBundle(bundle).wheels
  const alike = findings.filter((finding) => finding.code === code)
  const here = alike.find(({ wheels }) => wheels.some((wheel) => own.includes(wheel)))
  const finding = here ?? alike[0]
  return finding ? sentenceFor(words, finding) : ''
}
