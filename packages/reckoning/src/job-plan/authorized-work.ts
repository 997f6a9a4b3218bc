import type { Work } from '../estimate.ts'
import type { RoadPosition } from '../wheels.ts'

/** The sound spare goes on in place of a wheel that must not be used. It is not sold: it follows from a refusal on record. */
export type FitSpare = { readonly kind: 'fit-spare'; readonly wheel: RoadPosition }

export type PlannedWork = Work | FitSpare

/** What is to be done, each work with the bundle that it was authorized by; `null`: it needs none. */
export type AuthorizedWork = { readonly work: PlannedWork; readonly bundleKey: string | null }

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
    bundleKey ?? '',
    ...Object.entries(work)
      .map((entry) => entry.join('='))
      .sort(),
  ].join(' ')
