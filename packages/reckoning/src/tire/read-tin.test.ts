import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CalendarDay } from '../units/calendar-day.ts'
import { dateCodeText } from './date-code-text.ts'
import { readTin } from './read-tin.ts'

const today = '2026-09-30' as CalendarDay
const partsOf = (typed: string) => {
  const read = readTin(typed, today)
  return read.ok
    ? [read.value.shape, read.value.plantCode, read.value.makersCode, dateCodeText(read.value.made)]
    : read.fault
}

describe('a typed tire identification number', () => {
  it.each([
    ['1A42BCDEF2620', ['new', '1A4', '2BCDEF', '2620']],
    ['DOT 1A4 2BCDEF 2620', ['new', '1A4', '2BCDEF', '2620']],
    ['dot-1a4-2bcdef-2620', ['new', '1A4', '2BCDEF', '2620']],
    ['A42BCDEF1015', ['old', 'A4', '2BCDEF', '1015']],
    ['A42BCDE317', ['old', 'A4', '2BCDE', '317']],
    ['A42BCDEF317', ['old', 'A4', '2BCDEF', '317']],
    ['A42B317', ['old', 'A4', '2B', '317']],
    ['A42B2617', ['old', 'A4', '2B', '2617']],
    ['ABC2620', ['retread', 'ABC', '', '2620']],
    ['R ABC2620', ['retread', 'ABC', '', '2620']],
    [' r  abc2620 ', ['retread', 'ABC', '', '2620']],
    ['ABCR 2620', ['old', 'AB', 'CR', '2620']],
    ['DOT-R-ABC 2620', ['retread', 'ABC', '', '2620']],
    ['R12CD2620', ['old', 'R1', '2CD', '2620']],
    ['RA2B317', ['old', 'RA', '2B', '317']],
  ])('"%s" is %j', (typed, parts) => {
    expect(partsOf(typed)).toEqual(parts)
  })

  it.each([
    ['', 'not-a-date-code'],
    ['DOT', 'not-a-date-code'],
    ['1A4DOT2620', 'symbol'],
    ['A42BCDEF', 'not-a-date-code'],
    ['A42BCDEF15', 'not-a-date-code'],
    ['2620', 'length'],
    ['AB2620', 'length'],
    ['A4B317', 'length'],
    ['1A42BCDEFH2620', 'length'],
    ['1A42BCDEFH317', 'length'],
    ['A42BCDEFH317', 'length'],
    ['R A42BCDEF1015', 'retread'],
    ['R 1A42BCDEF2620', 'retread'],
    ['1A42BCDEF5420', 'no-such-week'],
    ['1A42BCDEF4026', 'in-the-future'],
    ['1A42BCDEF26.20', 'symbol'],
    ['1A42BCDEFÄ620', 'symbol'],
  ])('"%s" is refused: %s', (typed, fault) => {
    const read = readTin(typed, today)
    expect(read).toMatchObject({ ok: false, fault })
    if (!read.ok) expect(read.do).toMatch(/[.?]$/)
  })

  it.each([
    ['G', 'Is it a 6 or a C?'],
    ['I', 'Is it a 1?'],
    ['O', 'Is it a 0?'],
    ['Q', 'Is it a 0?'],
    ['S', 'Is it a 5?'],
    ['Z', 'Is it a 2?'],
    ['#', 'Read it again.'],
  ])('is refused for the symbol %s, which it names', (odd, words) => {
    expect(readTin(`1A42B${odd}DEF2620`, today)).toMatchObject({
      fault: 'symbol',
      found: `1A42B${odd}DEF2620`,
      do: `"${odd}" is not used in these numbers. ${words}`,
    })
  })

  it('is refused for its length with how many symbols it has', () => {
    expect(readTin('AB2620', today)).toMatchObject({ allowed: expect.stringContaining('this one has 6') })
  })

  it('is taken as typed or refused: nothing is thrown or guessed in 10,000 texts', () => {
    const symbols = [...'0123456789ABCDEFHJKLMNPRTUVWXY']
    const nearly = fc
      .tuple(
        fc.constantFrom('', 'DOT ', 'DOT', 'R ', 'DOT R ', 'R'),
        fc.array(fc.constantFrom(...symbols, ' ', '-', 'O', 'Ü'), { maxLength: 12 }),
        fc.oneof(
          fc.constantFrom('2620', '317', '5323', '5320', '0109', '4030'),
          fc.stringMatching(/^\d{2,4}$/),
        ),
      )
      .map(([before, middle, date]) => before + middle.join('') + date)
    let taken = 0
    fc.assert(
      fc.property(fc.oneof(fc.string(), nearly), (typed) => {
        const read = readTin(typed, today)
        if (!read.ok) return
        taken += 1
        const { shape, plantCode, makersCode, made } = read.value
        const text = `${shape === 'retread' ? 'R ' : ''}${plantCode}${makersCode}${dateCodeText(made)}`
        expect(readTin(text, today)).toEqual(read)
        expect(
          typed
            .toUpperCase()
            .replace(/[\s-]/g, '')
            .endsWith(plantCode + makersCode + dateCodeText(made)),
        ).toBe(true)
      }),
      { seed: 20260112, numRuns: 10_000 },
    )
    expect(taken).toBeGreaterThan(200)
  })
})
