import { describe, expect, it } from 'vitest'
import { atClockTime, clockTimesInOrder } from './order-times.ts'

const shop = { timeZone: 'America/Chicago' }
const now = '2026-01-12T17:40:00.000Z'

describe('times of an order', () => {
  it('have their day in a sentence when it is not today', () => {
    expect(atClockTime('2026-01-12T15:12:00.000Z', now, shop)).toBe('at 9:12\u00a0AM')
    expect(atClockTime('2026-01-09T15:12:00.000Z', now, shop)).toBe('on Jan 9, 9:12\u00a0AM')
  })

  it('of a list name the day at its first, and again where it changes', () => {
    const of = (...days: number[]) => days.map((on) => `2026-01-${String(on).padStart(2, '0')}T15:12:00.000Z`)
    const time = '9:12\u00a0AM'
    expect(clockTimesInOrder(of(12, 12), now, shop)).toEqual([time, time])
    expect(clockTimesInOrder(of(9, 9, 11, 12, 12), now, shop)).toEqual([
      ...[`Jan 9, ${time}`, time],
      ...[`Jan 11, ${time}`, `today, ${time}`, time],
    ])
  })
})
