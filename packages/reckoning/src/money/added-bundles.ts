import type { BundleTitle } from '../estimate.ts'

/**
 * Whether a bundle was added for the customer or by hand, and not for the findings.
 *
 * @source This program's own rule.
 */
export const isAdded = ({ bundleKey }: { readonly bundleKey: string }): boolean =>
  bundleKey.startsWith('asked.') || bundleKey.startsWith('hand.')

/**
 * Whether a bundle is only for a case that may never come: nothing of it is owed, whatever the answer. A Yes lets the work go on
 * up to its price, a No means to stop and show the customer first.
 *
 * @source This program's own rule.
 */
export const isConditional = ({ title }: { readonly title: BundleTitle }): boolean =>
  title === 'if-stem-breaks'
