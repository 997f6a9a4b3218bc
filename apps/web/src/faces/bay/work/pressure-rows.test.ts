import type { Surroundings } from '@bayledger/reckoning/sheet'
import { describe, expect, it } from 'vitest'
import { pressureRows, surroundingsOf } from './pressure-rows.ts'

const arrival: Surroundings = {
  outdoor: { value: 27, unit: 'F' },
  tires: 'cold',
  tire: null,
  overnightLow: null,
  altitudeFeet: 820,
}
const before = { surroundings: arrival, at: null, writtenAt: '2026-01-12T16:00:00.000Z' }
const keys = (values: Record<string, string | null>, minutes: number) =>
  pressureRows(values, before, Date.parse(before.writtenAt) + minutes * 60_000).map(({ key }) => key)

describe('the temperatures for a pressure', () => {
  it('are taken as on arrival by a press only, and only within half an hour', () => {
    expect(keys({}, 30)).toEqual(['basis'])
    expect(keys({ basis: 'same' }, 30)).toEqual(['basis', 'asLeft'])
    expect(keys({}, 31)).toEqual(['tires', 'tire', 'outdoor', 'asLeft'])
  })

  it('are never filled in: until they are said there is no target', () => {
    expect(surroundingsOf({}, arrival)).toBeNull()
    expect(surroundingsOf({ tires: 'indoor-warmed' }, arrival)).toBeNull()
    expect(surroundingsOf({ tires: 'indoor-warmed', outdoor: '27' }, arrival)).toMatchObject({
      tires: 'indoor-warmed',
      tire: null,
    })
    expect(surroundingsOf({ basis: 'same' }, arrival)).toBe(arrival)
  })

  it('of a cold tire need no reading of its air', () => {
    expect(keys({ tires: 'cold' }, 60)).toEqual(['tires', 'outdoor', 'asLeft'])
    expect(surroundingsOf({ tires: 'cold', tire: '60', outdoor: '27' }, arrival)?.tire).toBeNull()
  })
})
