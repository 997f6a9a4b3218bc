import type { Work } from '../estimate.ts'

/** What was authorized, each work with the bundle that it belongs to. */
export type AuthorizedWork = { readonly work: Work; readonly bundleKey: string }

/**
 * Works in one order, whatever the order in which they were authorized: a plan follows from the set of them.
 *
 * @source This program's own rule.
 */
export const inOneOrder = (authorized: readonly AuthorizedWork[]): AuthorizedWork[] => {
  const texts = new Map(authorized.map((one) => [textOf(one), one]))
  return [...texts.keys()].sort().flatMap((text) => texts.get(text) ?? [])
}

const textOf = ({ work, bundleKey }: AuthorizedWork): string =>
  [
    bundleKey,
    ...Object.entries(work)
      .map((entry) => entry.join('='))
      .sort(),
  ].join(' ')
