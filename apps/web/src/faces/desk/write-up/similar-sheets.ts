import type { SpecificationSheet } from '@bayledger/reckoning/sheet'

type Named = Pick<SpecificationSheet, 'sheetId' | 'name'>

/**
 * Sheets on file whose name shares words with how a vehicle is described, the likest first, three at most. They are
 * offered and never taken by themselves: one word apart is another kind, with another torque.
 */
export const similarSheets = <Sheet extends Named>(
  description: string,
  sheets: readonly Sheet[],
): readonly Sheet[] => {
  const words = wordsOf(description)
  return sheets
    .map((sheet) => ({ sheet, shared: wordsOf(sheet.name).filter((word) => words.includes(word)).length }))
    .filter(({ shared }) => shared > 0)
    .toSorted((one, other) => other.shared - one.shared)
    .slice(0, 3)
    .map(({ sheet }) => sheet)
}

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word.length > 2)
