/**
 * Source: 64 FR 36807 of 8 July 1999, read (federal.elaws.us): the date code became four digits instead of three, which
 * were the week and the last digit of the year. The change took hold in July 2000 (quoted in owner handbooks; the 2nd
 * from memory), so that a tire with three digits was at least 26 years old on 2026-09-30.
 */
import { readDateCode } from '@bayledger/reckoning/tire/read-date-code'
import { readTin } from '@bayledger/reckoning/tire/read-tin'
import { tireAge } from '@bayledger/reckoning/tire/tire-age'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const today = '2026-09-30' as CalendarDay
const ageOf = (code: string) => {
  const read = readDateCode(code, today)
  if (!read.ok) throw new Error(read.allowed)
  return tireAge(read.value, today)
}

published({ document: '64 FR 36807', section: 'date code', edition: '1999', certainty: 'read' }, () => {
  it.each([
    ['310', 1990],
    ['311', 1991],
    ['312', 1992],
    ['313', 1993],
    ['314', 1994],
    ['315', 1995],
    ['316', 1996],
    ['317', 1997],
    ['318', 1998],
    ['319', 1999],
    ['260', 2000],
  ])('%s is of %i at the latest, and its decade is not known', (code, year) => {
    expect(readDateCode(code, today)).toMatchObject({ value: { year, decadeKnown: false } })
  })

  it.each(['019', '529', '010', '260', '518'])('%s is of a tire at least 26 years old', (code) => {
    expect(ageOf(code)).toMatchObject({ atLeast: true })
    expect(ageOf(code).fullYears).toBeGreaterThanOrEqual(26)
  })

  it('A42BCDE317 ends in three: week 31 of 1997 or ten or twenty years before', () => {
    expect(readTin('A42BCDE317', today)).toMatchObject({
      value: { shape: 'old', made: { week: 31, year: 1997, decadeKnown: false } },
    })
    expect(ageOf('317')).toMatchObject({ fullYears: 29, atLeast: true })
  })
})
