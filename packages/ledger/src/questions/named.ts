import type { Bundle } from '@bayledger/reckoning/estimate'

/** What names a bundle of the estimate in a refusal or a gate's reason. */
export type BundleNamed = { readonly bundleKey: string; readonly title: string }
export const namedBundle = ({ bundleKey, title }: Bundle): BundleNamed => ({ bundleKey, title })
