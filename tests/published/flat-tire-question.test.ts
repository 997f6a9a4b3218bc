/**
 * Source: a university's magazine for chemistry teachers, September 2014, "Why is my tire flat?"
 * (uwaterloo.ca/chem13-news-magazine/september-2014), read: 30.00 psi at 20 °C is 23.14 psi at −25 °C, in open air of
 * 14.70 psi. It gives hundredths: agreement is required for within 0.005 psi and what 14.70 for 14.696 moves.
 */
import { shortfallSince } from '@bayledger/reckoning/pressure/shortfall'
import { kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { gaugedAtSea } from './gauged-at-sea.ts'
import { published } from './published.ts'

published(
  {
    document: 'A university magazine for chemistry teachers, Why is my tire flat?',
    section: 'question 2',
    edition: 'September 2014',
    certainty: 'read',
  },
  () => {
    it('all that the tire lacks in the morning is colder air', () => {
      const { total, byTemperature, byLostAir } = shortfallSince(
        gaugedAtSea(30, 'psi', 20),
        gaugedAtSea(23.14, 'psi', -25),
      )
      expect(kilopascalsIn('psi', total)).toBeCloseTo(6.86, 9)
      expect(Math.abs(kilopascalsIn('psi', byTemperature) - 6.86)).toBeLessThan(0.006)
      expect(Math.abs(kilopascalsIn('psi', byLostAir))).toBeLessThan(0.006)
    })
  },
)
