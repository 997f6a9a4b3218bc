/**
 * Source: 49 CFR 574.5(c) and the summary at 80 FR 19553, read (federal.elaws.us, thefederalregister.org): new tires 13
 * symbols on one sidewall, retreads 7; plant codes of two symbols became three; the variable length up to 12 ended. That
 * the thirteen part into 3, 6 and 4, and the R of a retread: quoted in course notes.
 */
import { readTin } from '@bayledger/reckoning/tire/read-tin'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const today = '2026-09-30' as CalendarDay

published(
  {
    document: '49 CFR 574.5',
    section: '(c), shapes, with 80 FR 19553',
    edition: '2015',
    certainty: 'read',
  },
  () => {
    it.each([
      ['1A42BCDEF2620', 'new', '1A4', '2BCDEF', 26, 2020],
      ['A42BCDEF1015', 'old', 'A4', '2BCDEF', 10, 2015],
      ['ABC2620', 'retread', 'ABC', '', 26, 2020],
      ['R ABC2620', 'retread', 'ABC', '', 26, 2020],
    ])(
      '%s is %s: plant %s, maker’s own “%s”, week %i of %i',
      (typed, shape, plantCode, makersCode, week, year) => {
        expect(readTin(typed, today)).toEqual({
          ok: true,
          value: { shape, plantCode, makersCode, made: { week, year, decadeKnown: true } },
        })
      },
    )

    it.each([
      ['1A42BCDEFH2620', 14],
      ['1A42BCDEFHJ2620', 15],
      ['AB2620', 6],
      ['A2620', 5],
    ])('%s, with %i symbols, is none of them', (typed, length) => {
      expect(readTin(typed, today)).toMatchObject({
        fault: 'length',
        allowed: expect.stringContaining(`this one has ${length}`),
      })
    })

    it.each(['R A42BCDEF1015', 'R 1A42BCDEF2620'])('%s is no retread: it has not 7 symbols', (typed) => {
      expect(readTin(typed, today)).toMatchObject({ fault: 'retread' })
    })
  },
)
