/**
 * Source: worked exercises of physics courses, read: a tire at 220 kPa and 15 °C is kept at 220 kPa while it warms to 38 °C:
 * 7.4 % of its air must go (class.physicsnaught.org, exercise 504); at 230 kPa from 13 to 40 °C, 0.0863 of it
 * (mathskey.com, question 32886). They take 273 for 273.15 K: agreement is required for within a unit of their last digit.
 */
import { shortfallSince } from '@bayledger/reckoning/pressure/shortfall'
import { expect, it } from 'vitest'
import { gaugedAtSea } from './gauged-at-sea.ts'
import { published } from './published.ts'

published({ document: 'Exercises of physics courses, air let out of a warm tire', certainty: 'read' }, () => {
  it.each([
    [220, 15, 38, 0.074, 0.001],
    [230, 13, 40, 0.0863, 0.0001],
  ])('at %d kPa, from %d to %d °C, the lost air is %d of all', (kPa, from, to, share, within) => {
    const set = gaugedAtSea(kPa, 'kPa', from)
    const { total, byTemperature, byLostAir } = shortfallSince(set, gaugedAtSea(kPa, 'kPa', to))
    const allOfIt = kPa + set.air - byTemperature
    expect(total).toBe(0)
    expect(Math.abs(byLostAir / allOfIt - share)).toBeLessThanOrEqual(within)
  })
})
