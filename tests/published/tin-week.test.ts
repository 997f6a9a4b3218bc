/**
 * Source: 49 CFR 574.5(b)(3), date code, quoted in course notes that give the eCFR of September 2026: week and year in
 * the last four digits; "0109 means the tire was manufactured in the first full calendar week of 2009". January 2009
 * began on a Thursday: its first full week from Sunday to Saturday is 4 to 10 January.
 */
import { sundayOfWeek } from '@bayledger/reckoning/tire/build-week'
import { readDateCode } from '@bayledger/reckoning/tire/read-date-code'
import { readTin } from '@bayledger/reckoning/tire/read-tin'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const today = '2026-09-30' as CalendarDay

published({ document: '49 CFR 574.5', section: '(b)(3)', edition: '2026', certainty: 'quoted' }, () => {
  it('0109 is the first week of 2009', () => {
    expect(readDateCode('0109', today)).toMatchObject({ value: { week: 1, year: 2009, decadeKnown: true } })
  })

  it('which begins with the first Sunday of that January', () => {
    expect(sundayOfWeek({ week: 1, year: 2009 })).toBe('2009-01-04')
  })

  it.each(['1A42BCDEF0109', 'A42BCDEF0109', 'ABC0109'])('the date is the last four digits of %s', (tin) => {
    expect(readTin(tin, today)).toMatchObject({ value: { made: { week: 1, year: 2009 } } })
  })
})
