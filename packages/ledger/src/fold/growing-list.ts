/**
 * An immutable list that can be continued: `push` costs the same at any length. Lists that continue one another share
 * their members, and each reads only up to its own `length`.
 */
export type GrowingList<T> = { readonly shared: T[]; readonly length: number }

export const growingList = <T>(members: readonly T[]): GrowingList<T> => ({
  shared: [...members],
  length: members.length,
})

/** The list with one more member. The second to continue the same list gets a copy of its own. */
export const push = <T>({ shared, length }: GrowingList<T>, member: T): GrowingList<T> => {
  const own = shared.length === length ? shared : shared.slice(0, length)
  own.push(member)
  return { shared: own, length: length + 1 }
}

export const membersOf = <T>({ shared, length }: GrowingList<T>): readonly T[] => shared.slice(0, length)
