import { describe, expect, it } from 'vitest'
import { monthsAfter, sensorCover, usualWarranty } from './warranty.ts'

describe('some months after a day', () => {
  it.each([
    ['2026-01-12', 24, '2028-01-12'],
    ['2026-01-31', 1, '2026-02-28'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2026-11-30', 3, '2027-02-28'],
    ['2026-05-05', 0, '2026-05-05'],
  ])('%s and %s is %s', (day, count, then) => {
    expect(monthsAfter(day, count)).toBe(then)
  })
})

describe('a sensor that the shop fitted', () => {
  const fitted = { day: '2026-01-12', miles: 52_000 }
  it.each([
    ['on the last day', { day: '2028-01-12', miles: 60_000 }, 'covered'],
    ['the day after it', { day: '2028-01-13', miles: 60_000 }, 'ended'],
    ['at the last mile', { day: '2027-01-12', miles: 76_000 }, 'covered'],
    ['a mile further', { day: '2027-01-12', miles: 76_001 }, 'ended'],
    ['in time, with an odometer that nobody read', { day: '2027-01-12', miles: null }, 'person-decides'],
    ['after its time, whatever the odometer', { day: '2029-01-12', miles: null }, 'ended'],
  ] as const)('%s is judged by the usual terms', (_, now, cover) => {
    expect(sensorCover(usualWarranty, fitted, now)).toEqual({
      ...{ cover, until: '2028-01-12', untilMiles: 76_000 },
    })
  })

  it('needs no odometer where the terms have no limit of miles', () => {
    const terms = { ...usualWarranty, sensorMiles: null }
    const now = { day: '2026-06-01', miles: null }
    expect(sensorCover(terms, { ...fitted, miles: null }, now).cover).toBe('covered')
  })
})
