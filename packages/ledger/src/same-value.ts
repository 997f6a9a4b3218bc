/**
 * Whether two values have the same canonical text (RFC 8785), without making either: members may stand in any order, and
 * one that is undefined is not there.
 */
export const isSameValue = (one: unknown, other: unknown): boolean => {
  if (one === other) return true
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false
  if (Array.isArray(one) !== Array.isArray(other)) return false
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((value, index) => isSameValue(value, other[index]))
  const left = one as Readonly<Record<string, unknown>>
  const right = other as Readonly<Record<string, unknown>>
  return (
    membersOf(left) === membersOf(right) &&
    Object.keys(left).every((key) => isSameValue(left[key], right[key]))
  )
}

const membersOf = (value: Readonly<Record<string, unknown>>): number => {
  let count = 0
  for (const key in value) if (value[key] !== undefined) count += 1
  return count
}
