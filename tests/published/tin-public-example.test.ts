/**
 * Source: the page of the National Highway Traffic Safety Administration on tires for the public, quoted in course
 * notes of 2026: a tire whose number ends in 0308 was made in the third week of 2008; some makers of vehicles and tires
 * advise to replace tires at 6 to 10 years, whatever their tread.
 */
import { thresholds } from '@bayledger/reckoning/diagnosis/thresholds'
import { readDateCode } from '@bayledger/reckoning/tire/read-date-code'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: 'NHTSA, tire pages for the public', section: 'aging', edition: '2026', certainty: 'quoted' },
  () => {
    it('0308 is the third week of 2008', () => {
      expect(readDateCode('0308', '2026-09-30' as CalendarDay)).toEqual({
        ok: true,
        value: { week: 3, year: 2008, decadeKnown: true },
      })
    })

    it.each([
      ['tireOldYears', 6],
      ['tireVeryOldYears', 10],
    ] as const)('%s is %i', (limit, years) => {
      expect(thresholds[limit]).toBe(years)
    })
  },
)
