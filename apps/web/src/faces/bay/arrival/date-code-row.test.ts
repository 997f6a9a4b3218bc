import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { describe, expect, it } from 'vitest'
import { isAnswered, rowFault, rowWords } from '../form/rows.ts'
import { dateCodeRow, yearsByDateCode } from './date-code-row.ts'

const today = '2026-01-12' as CalendarDay
const wordsOf = (typed: string) => rowWords(dateCodeRow(typed, today), typed)

describe('the date code of a tire', () => {
  it.each([
    ['0119', '0119 · 7 years', 7],
    ['3925', '3925 · under a year', 0],
    ['317', '317 · 28 years or more', 28],
  ])('%s says %s', (typed, words, years) => {
    expect(wordsOf(typed)).toBe(words)
    expect(yearsByDateCode(typed, today)).toBe(years)
    expect(isAnswered(dateCodeRow(typed, today), typed)).toBe(true)
  })

  it.each([
    ['26', 'four digits'],
    ['5420', '2020 has weeks 01 to 52'],
    ['2626', 'a week that has begun by 2026-01-12'],
  ])('%s is refused, and no age is made of it', (typed, allowed) => {
    const row = dateCodeRow(typed, today)
    expect(rowFault(row, typed)).toContain(allowed)
    expect(isAnswered(row, typed)).toBe(false)
    expect(yearsByDateCode(typed, today)).toBeNull()
  })

  it('says of three digits that they name no decade', () => {
    expect(dateCodeRow('317', today)).toMatchObject({
      hint: 'Three digits: at least 28 years, decade unknown.',
    })
    expect(dateCodeRow('2620', today)).toMatchObject({ hint: expect.stringContaining('after DOT') })
  })

  it('may be left out', () => {
    expect(isAnswered(dateCodeRow(null, today), null)).toBe(true)
    expect(rowWords(dateCodeRow(null, today), null)).toBe('not looked at')
    expect(yearsByDateCode(null, today)).toBeNull()
    expect(yearsByDateCode(undefined, today)).toBeNull()
  })
})
