import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { describe, expect, it } from 'vitest'
import { isAnswered, rowFault, rowsOpen } from '../form/rows.ts'
import { sidewallRows, sidewallSeen } from './sidewall-rows.ts'

const today = '2026-01-12' as CalendarDay
const rows = (values: Record<string, string | null> = {}, hasPlies = true) =>
  sidewallRows(values, today, { sheetSize: '235/60R18 103H', hasPlies })
const row = (key: string, values: Record<string, string | null> = {}) => {
  const found = rows(values).find((one) => one.key === key)
  if (!found) throw new RangeError(`no row ${key}`)
  return found
}

describe('what the sidewall of a tire says', () => {
  it('may be left out whole', () => {
    expect(rowsOpen(rows(), {})).toEqual([])
    expect(sidewallSeen({})).toEqual({})
    expect(sidewallSeen({ size: null, dateCode: null, casing: null })).toEqual({})
  })

  it('is the sheet’s size by one press, and any other by its letters', () => {
    expect(row('size')).toMatchObject({ suggestions: [{ value: '235/60R18 103H' }] })
    expect(row('size', { size: '235/60r18 107v xl' })).toMatchObject({ hint: 'As the sheet has it.' })
    expect(row('size', { size: '235/55R18 100H' })).toMatchObject({
      hint: expect.stringMatching(/record what the tire says/),
    })
    expect(sidewallSeen({ size: ' 235/55 r18 100h ' })).toEqual({
      sizeSeen: { readable: true, text: '235/55R18 100H' },
    })
  })

  it('is refused with what is allowed where it is no size, no date code or no number', () => {
    expect(isAnswered(row('size'), '235/60')).toBe(false)
    expect(rowFault(row('size'), '235/60')).toContain('Allowed: a size as')
    expect(rowFault(row('dateCode'), '5420')).toContain('weeks 01 to 52')
    expect(rowFault(row('tin'), 'AB2620')).toContain('13 symbols')
    expect(rowFault(row('tin'), '1A42BCDEF2620')).toBeUndefined()
  })

  it('is the whole number where it was typed, else the date code', () => {
    expect(sidewallSeen({ dateCode: '2620' })).toEqual({ dateCodeSeen: { readable: true, text: '2620' } })
    expect(sidewallSeen({ dateCode: '2620', tin: '1a42bcdef2620' })).toEqual({
      dateCodeSeen: { readable: true, text: '1A42BCDEF2620' },
    })
  })

  it('says why there was nothing to read', () => {
    expect(sidewallSeen({ sizeUnread: 'worn-off', dateUnread: 'on-the-inner-side' })).toEqual({
      sizeSeen: { readable: false, why: 'worn-off' },
      dateCodeSeen: { readable: false, why: 'on-the-inner-side' },
    })
  })

  it('is asked for its plies on a light truck only', () => {
    expect(rows({}, false).some(({ key }) => key === 'casing')).toBe(false)
    expect(sidewallSeen({ casing: 'polyester' })).toEqual({ casing: 'polyester' })
  })
})
