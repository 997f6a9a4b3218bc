import type { SheetTire } from '../sheet.ts'
import { readTireSize } from '../tire/read-tire-size.ts'
import { type LoadMark, loadLetters, type TireSize } from '../tire/tire-size.ts'

/**
 * The size that the sheet names, with the load mark of its load class where the size itself prints none; `null` where the
 * sheet's text is no size.
 *
 * @source this program's own rule
 */
export const sizeBySheet = ({ size, loadClass }: SheetTire): TireSize | null => {
  const read = readTireSize(size)
  return read.ok ? { ...read.value, loadMark: read.value.loadMark ?? markOf(loadClass) } : null
}

const markOf = (loadClass: SheetTire['loadClass']): LoadMark | null =>
  loadClass === 'XL' ? 'XL' : (loadLetters.find((letter) => loadClass === `LT-${letter}`) ?? null)
