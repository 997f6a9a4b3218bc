import { widthOf } from '../fonts/runs.ts'
import { type Furniture, furniture } from './page-elements.ts'
import { sheet, sizes } from './paper.ts'
import { textMark } from './paragraph.ts'

const style = { typeface: 'regular', size: sizes.small } as const

/** The ledger entry's number in the margin, as in a paper ledger; nothing where a line comes from no entry. */
export const entryMark = (entry: number | null, page: number, top: number): Furniture[] => {
  if (entry === null) return []
  const text = String(entry)
  const x = sheet.marginRule - 4 - widthOf(text, style.typeface, style.size)
  return [furniture(page, [textMark(text, x, top + 2, style)])]
}
