import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CalendarDay, readCalendarDay } from '../units/calendar-day.ts'
import { sundayOfWeek } from './build-week.ts'
import { dateCodeText } from './date-code-text.ts'
import { readDateCode } from './read-date-code.ts'

const dayOf = (text: string): CalendarDay => {
  const read = readCalendarDay(text)
  if (!read.ok) throw new Error(read.do)
  return read.value
}
const today = dayOf('2026-09-30')

describe('a typed date code', () => {
  it.each([
    ['2620', 26, 2020, true],
    [' 0109 ', 1, 2009, true],
    ['0100', 1, 2000, true],
    ['5319', null, null, null],
    ['5323', 53, 2023, true],
    ['3926', 39, 2026, true],
    ['317', 31, 1997, false],
    ['011', 1, 1991, false],
    ['260', 26, 2000, false],
    ['270', 27, 1990, false],
    ['535', 53, 1995, false],
    ['534', 53, 1984, false],
    ['532', 53, 1972, false],
    ['530', null, null, null],
    ['531', null, null, null],
  ])('"%s" is week %s of %s, its decade known: %s', (typed, week, year, decadeKnown) => {
    expect(readDateCode(typed, today)).toMatchObject(
      week === null ? { ok: false, fault: 'no-such-week' } : { ok: true, value: { week, year, decadeKnown } },
    )
  })

  it.each([
    ['', 'not-a-date-code', 'four digits'],
    ['26', 'not-a-date-code', 'four digits'],
    ['26200', 'not-a-date-code', 'four digits'],
    ['26-20', 'not-a-date-code', 'four digits'],
    ['262O', 'not-a-date-code', 'four digits'],
    ['0020', 'no-such-week', '2020 has weeks 01 to 52'],
    ['5320', 'no-such-week', '2020 has weeks 01 to 52'],
    ['5423', 'no-such-week', '2023 has weeks 01 to 53'],
    ['007', 'no-such-week', 'weeks 01 to 53'],
    ['547', 'no-such-week', 'weeks 01 to 53'],
    ['537', 'no-such-week', 'week 53 only in a year that has one'],
    ['4026', 'in-the-future', 'begun by 2026-09-30'],
    ['2698', 'in-the-future', 'begun by 2026-09-30'],
  ])('"%s" is refused: %s, allowed is %s', (typed, fault, allowed) => {
    const read = readDateCode(typed, today)
    expect(read).toMatchObject({ ok: false, fault })
    if (read.ok) return
    expect(read.found.startsWith(typed)).toBe(true)
    expect(read.allowed).toContain(allowed)
    expect(read.do).toMatch(/\.$/)
  })

  it('is refused with the week it would be', () => {
    expect(readDateCode('4026', today)).toMatchObject({
      found: '4026: week 40 of 2026 begins on 2026-10-04',
      do: expect.stringContaining('week before year'),
    })
    expect(readDateCode('0020', today)).toMatchObject({ found: '0020: week 00' })
  })

  it('of the week in which the tire is inspected is taken from its Sunday on', () => {
    expect(readDateCode('3926', dayOf('2026-09-27')).ok).toBe(true)
    expect(readDateCode('3926', dayOf('2026-09-26'))).toMatchObject({ fault: 'in-the-future' })
  })

  it('of three digits is never after the day of the inspection either', () => {
    expect(readDateCode('260', dayOf('2000-06-24'))).toMatchObject({ fault: 'in-the-future' })
    expect(readDateCode('260', dayOf('2000-06-25'))).toMatchObject({ value: { year: 2000 } })
  })

  it('is taken as typed or refused: nothing is thrown or guessed in 10,000 texts', () => {
    let taken = 0
    const digits = fc.stringMatching(/^\d{2,5}$/)
    const day = fc
      .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
      .map((date) => dayOf(date.toISOString().slice(0, 10)))
    fc.assert(
      fc.property(fc.oneof(fc.string(), digits), day, (typed, inspectedOn) => {
        const read = readDateCode(typed, inspectedOn)
        if (!read.ok) return
        taken += 1
        expect(dateCodeText(read.value)).toBe(typed.trim())
        expect(readDateCode(dateCodeText(read.value), inspectedOn)).toEqual(read)
        expect(sundayOfWeek(read.value) <= inspectedOn).toBe(true)
      }),
      { seed: 20260112, numRuns: 10_000 },
    )
    expect(taken).toBeGreaterThan(500)
  })
})
