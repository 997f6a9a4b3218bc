import { describe, expect, it } from 'vitest'
import {
  ageMinutes,
  clockTime,
  clockTimeOrDate,
  clockTimeOrDay,
  day,
  fieldTime,
  minutes,
  money,
  pressureText,
} from './format.ts'

const shop = { timeZone: 'America/Chicago' }
const now = '2026-01-12T17:40:00.000Z'

describe('times', () => {
  it('are clock times of the shop, not of the device', () => {
    expect(clockTime(now, shop)).toBe('11:40\u00a0AM')
    expect(clockTime('2026-01-12T06:05:00.000Z', shop)).toBe('12:05\u00a0AM')
    // Daylight saving began on 2026-03-08 there (IANA time zone database).
    expect(clockTime('2026-03-09T17:40:00.000Z', shop)).toBe('12:40\u00a0PM')
  })

  it('have 24 hours in a field of a form', () => {
    expect(fieldTime(now, shop)).toBe('11:40')
    expect(fieldTime('2026-01-12T06:05:00.000Z', shop)).toBe('00:05')
    expect(fieldTime('2026-01-12T23:05:00.000Z', shop)).toBe('17:05')
  })

  it('name their day when it is not today', () => {
    expect(clockTimeOrDay('2026-01-12T15:12:00.000Z', now, shop)).toBe('9:12\u00a0AM')
    expect(clockTimeOrDay('2026-01-12T05:59:00.000Z', now, shop)).toBe('Jan 11, 11:59\u00a0PM')
    expect(day('2025-12-31T12:00:00.000Z', now, shop)).toBe('Dec 31, 2025')
    expect(day('2026-01-09T12:00:00.000Z', now, shop)).toBe('Jan 9')
  })

  it('name their year, too, where they may be long past', () => {
    expect(clockTimeOrDate('2026-01-12T15:12:00.000Z', now, shop)).toBe('9:12\u00a0AM')
    expect(clockTimeOrDate('2026-01-09T15:12:00.000Z', now, shop)).toBe('Jan 9, 9:12\u00a0AM')
    expect(clockTimeOrDate('2025-01-12T15:12:00.000Z', now, shop)).toBe('Jan 12, 2025, 9:12\u00a0AM')
  })

  it('turn into ages in whole minutes, never negative', () => {
    expect(ageMinutes('2026-01-12T15:12:00.000Z', now)).toBe(148)
    expect(ageMinutes('2026-01-12T17:41:00.000Z', now)).toBe(0)
    expect(minutes(1439)).toBe('1,439 min')
  })

  it('are days from a whole day on', () => {
    expect(minutes(1440)).toBe('1 day')
    expect(minutes(306_617)).toBe('212 days')
  })
})

describe('money', () => {
  it('is exact to the cent', () => {
    expect([0, 5, 18_420, 123_456_789, -1_200].map(money)).toEqual([
      '$0.00',
      '$0.05',
      '$184.20',
      '$1,234,567.89',
      '−$12.00',
    ])
  })
})

describe('pressures in a column', () => {
  it.each([
    [33, 'psi', '33.0'],
    [33.5, 'psi', '33.5'],
    [27.97, 'psi', '28.0'],
    [241.3, 'kPa', '241'],
    [2.4, 'bar', '2.40'],
  ] as const)('%d %s is shown as %s', (value, unit, text) => {
    expect(pressureText({ value, unit })).toBe(text)
  })
})
