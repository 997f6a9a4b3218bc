import { type Reading, refused, taken } from '../reading.ts'
import type { CalendarDay } from '../units/calendar-day.ts'
import { tinWords } from '../words/typed-tire.ts'
import { type BuildDate, type DateCodeFault, readDateCode } from './read-date-code.ts'

export type TinFault = 'length' | 'symbol' | 'retread' | DateCodeFault

/**
 * A tire identification number. `new`: thirteen symbols, since 2015. `old`: plant in two symbols, then size and what
 * the maker likes, up to twelve in all. `retread`: seven, marked with an R apart; the plant is the retreader's.
 */
export type Tin = {
  readonly shape: 'new' | 'old' | 'retread'
  readonly plantCode: string
  /** The maker's own symbols between plant and date; the old shape begins them with the size. */
  readonly makersCode: string
  readonly made: BuildDate
}

/**
 * Reads a tire identification number: letters and digits with or without blanks and hyphens, with or without the DOT
 * before it; of a retread, the R before it set apart by a blank or hyphen. Seven symbols that end in four digits are a
 * retread's. An old number that ends in four digits is read as week and year in four; where only three of them are the
 * date, pass only these to `readDateCode`.
 *
 * @limits old shape: plant 2, size 2, up to 4 more, date 4 or 3
 * @source 49 CFR 574.5 (thirteen and seven symbols: read; split of the thirteen and the R: quoted; size of the old
 * groups: quoted in owner handbooks, their maxima from memory; that G, I, O, Q, S and Z are never used: from memory)
 */
export const readTin = (typed: string, inspectedOn: CalendarDay): Reading<Tin, TinFault> => {
  const text = typed
    .trim()
    .toUpperCase()
    .replace(/^DOT[\s-]*/, '')
  const retreadMark = /^R[\s-]/.test(text)
  const symbols = text.slice(retreadMark ? 1 : 0).replace(/[\s-]/g, '')
  const odd = /[^0-9A-FHJ-NPRT-Y]/u.exec(symbols)?.[0]
  if (odd !== undefined) return refused('symbol', typed, tinWords.symbol(odd))
  const date = /\d{3,4}$/.exec(symbols)?.[0] ?? ''
  const made = readDateCode(date, inspectedOn)
  if (!made.ok) return made
  const shape = shapeOf(symbols.length, date.length)
  if (shape === null) return refused('length', typed, tinWords.length(symbols.length))
  if (retreadMark && shape !== 'retread') return refused('retread', typed, tinWords.retread)
  const plantLength = shape === 'old' ? 2 : 3
  return taken({
    shape,
    plantCode: symbols.slice(0, plantLength),
    makersCode: symbols.slice(plantLength, -date.length),
    made: made.value,
  })
}

const shapeOf = (symbols: number, dateDigits: number): Tin['shape'] | null => {
  if (symbols === 13 && dateDigits === 4) return 'new'
  if (symbols === 7 && dateDigits === 4) return 'retread'
  const others = symbols - dateDigits
  return others >= 4 && others <= 8 ? 'old' : null
}
