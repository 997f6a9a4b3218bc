/** What decides whether two bundles exclude each other. */
type Replaceable = { readonly bundleKey: string; readonly alternativeTo: string | null }

/** Whether the customer can say Yes to only one of two bundles: one replaces the other, or both replace the same one. */
export const areAlternatives = (one: Replaceable, other: Replaceable): boolean =>
  one.bundleKey !== other.bundleKey &&
  (one.alternativeTo === other.bundleKey ||
    other.alternativeTo === one.bundleKey ||
    (one.alternativeTo !== null && one.alternativeTo === other.alternativeTo))
