import type { BundleTitle } from '@bayledger/reckoning/estimate'
import { inReadingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { IssuedBundle } from '../state.ts'

/** How a refusal or a gate's reason names a bundle of the estimate. */
export type BundleNamed = {
  readonly bundleKey: string
  readonly title: BundleTitle
  /** The wheels that its works name, each once. */
  readonly wheels: readonly WheelPosition[]
  /** The title of a bundle that was issued in words. */
  readonly asWritten: string | null
}
export const namedBundle = ({
  bundleKey,
  title,
  works,
  asWritten,
}: Pick<IssuedBundle, 'bundleKey' | 'title' | 'works' | 'asWritten'>): BundleNamed => ({
  bundleKey,
  title,
  wheels: inReadingOrder(works.flatMap((work) => ('wheel' in work ? [work.wheel] : []))),
  asWritten: asWritten?.title ?? null,
})
