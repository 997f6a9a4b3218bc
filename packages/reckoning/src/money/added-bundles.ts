/**
 * Whether a bundle was added for the customer or by hand, and not for the findings.
 *
 * @source This program's own rule.
 */
export const isAdded = ({ bundleKey }: { readonly bundleKey: string }): boolean =>
  bundleKey.startsWith('asked.') || bundleKey.startsWith('hand.')
