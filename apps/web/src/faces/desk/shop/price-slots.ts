import { type RecordRow, textIn } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

/**
 * A list within a record's rows: those that are filled in and one empty place after them. One whose words are emptied is
 * left out when it is saved.
 */
export const listRows = (
  values: RowValues,
  path: string,
  label: string,
  most: number,
  rowsAt: (at: string) => readonly RecordRow[],
): RecordRow[] => {
  const filled = Array.from({ length: most }, (_, index) => `${path}.${index}`)
  const last = filled.findLastIndex((at) => values[`${at}.key`] || textIn(values, `${at}.words`) !== '')
  return filled.slice(0, Math.min(most, last + 2)).flatMap((at, index) => {
    const words: RecordRow = {
      kind: 'text',
      key: `${at}.words`,
      label: `Name of the ${label}`,
      most: 80,
      optional: 'none',
      hint: 'The customer reads it.',
    }
    const name = textIn(values, `${at}.words`)
    if (name === '')
      return [{ ...words, label: index === last + 1 ? `Name of another ${label}` : words.label }]
    return [words, ...rowsAt(at).map((row) => ({ ...row, label: `${name}: ${row.label}` }))]
  })
}

/** The values of a list as its rows hold them. */
export const slotsOf = <One>(
  path: string,
  list: readonly One[],
  valuesOf: (one: One) => Readonly<Record<string, string>>,
): RowValues =>
  Object.fromEntries(
    list.flatMap((one, index) =>
      Object.entries(valuesOf(one)).map(([key, value]) => [`${path}.${index}.${key}`, value]),
    ),
  )

/** Those of a list that are filled in, each with where its rows are, its words, and its key, made of the words for a new one. */
export const filledIn = (
  values: RowValues,
  path: string,
  most: number,
): { readonly at: string; readonly key: string; readonly words: string }[] => {
  const taken = new Set<string>()
  return Array.from({ length: most }, (_, index) => `${path}.${index}`).flatMap((at) => {
    const words = textIn(values, `${at}.words`)
    if (words === '') return []
    const key = freeKey(values[`${at}.key`] || slug(words), taken)
    taken.add(key)
    return [{ at, key, words }]
  })
}

const slug = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 24) || 'one'

const freeKey = (wanted: string, taken: ReadonlySet<string>): string => {
  let key = wanted
  for (let number = 2; taken.has(key); number += 1) key = `${wanted}-${number}`
  return key
}
