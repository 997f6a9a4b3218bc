import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { describe, expect, it } from 'vitest'
import { rowWords } from '../../../ui/rows/rows.ts'
import { isAnswered, rowFault } from '../form/rows.ts'
import { dateCodeRow, yearsByDateCode } from './date-code-row.ts'

const today = '2026-01-12' as CalendarDay

describe('the date code of a tire', () => {
  it.each([
    ['0119', 'Age: 7 years.', 7],
    ['3925', 'Age: under a year.', 0],
    ['317', 'Age: at least 28 years, decade unknown.', 28],
  ])('%s is kept as typed, with its age beside it: %s', (typed, hint, years) => {
    const row = dateCodeRow(typed, today)
    expect(rowWords(row, typed)).toBe(typed)
    expect(row).toMatchObject({ hint })
    expect(yearsByDateCode(typed, today)).toBe(years)
    expect(isAnswered(row, typed)).toBe(true)
  })

  it.each([
    ['26', 'Four digits'],
    ['5420', '2020 has weeks 01 to 52'],
    ['2626', 'a week that has begun by 2026-01-12'],
  ])('%s is refused, and no age is made of it', (typed, allowed) => {
    const row = dateCodeRow(typed, today)
    expect(rowFault(row, typed)).toContain(allowed)
    expect(isAnswered(row, typed)).toBe(false)
    expect(yearsByDateCode(typed, today)).toBeNull()
  })

  it('may be left out', () => {
    expect(dateCodeRow(undefined, today)).toMatchObject({ hint: expect.stringContaining('after DOT') })
    expect(isAnswered(dateCodeRow(null, today), null)).toBe(true)
    expect(rowWords(dateCodeRow(null, today), null)).toBe('not looked at')
    expect(yearsByDateCode(null, today)).toBeNull()
    expect(yearsByDateCode(undefined, today)).toBeNull()
  })
})
