/** A place in a value that could not be stored and read back as it is. */
export type IllFormed = {
  readonly path: readonly string[]
  readonly why: 'nul' | 'half-a-character' | 'too-deep'
}

/** So many are enough to say what is wrong. */
const mostFound = 100

/** Deeper than any payload or request, and shallow enough for every recursive reader. */
const mostLevels = 40

/**
 * The first texts in a JSON value that PostgreSQL cannot keep (NUL) or that has no UTF-8 form (a lone surrogate), and every
 * place that lies deeper than 40 levels. Names of members are checked like texts. Depth cannot
 * exhaust the stack; bytes are not checked.
 */
export const illFormedIn = (value: unknown): IllFormed[] =>
  isWellFormed(value, 0) ? [] : allIllFormedIn(value)

/** What nearly every value is: found without noting where each of its parts lies. */
const isWellFormed = (value: unknown, level: number): boolean => {
  if (typeof value === 'string') return faultOf(value) === null
  if (value === null || typeof value !== 'object' || ArrayBuffer.isView(value)) return true
  if (level >= mostLevels) return false
  if (Array.isArray(value)) return value.every((member) => isWellFormed(member, level + 1))
  return Object.entries(value).every(
    ([name, member]) => faultOf(name) === null && isWellFormed(member, level + 1),
  )
}

const allIllFormedIn = (value: unknown): IllFormed[] => {
  const found: IllFormed[] = []
  const waiting: { readonly value: unknown; readonly path: readonly string[] }[] = [{ value, path: [] }]
  for (let next = waiting.pop(); next && found.length < mostFound; next = waiting.pop()) {
    const { path } = next
    if (typeof next.value === 'string') {
      const why = faultOf(next.value)
      if (why !== null) found.push({ path, why })
    } else if (next.value !== null && typeof next.value === 'object' && !ArrayBuffer.isView(next.value)) {
      if (path.length >= mostLevels) found.push({ path, why: 'too-deep' })
      else
        for (const [name, member] of Object.entries(next.value)) {
          const why = faultOf(name)
          if (why !== null) found.push({ path, why })
          waiting.push({ value: member, path: [...path, name] })
        }
    }
  }
  return found
}

const faultOf = (text: string): 'nul' | 'half-a-character' | null =>
  text.includes('\0') ? 'nul' : /\p{Cs}/u.test(text) ? 'half-a-character' : null
