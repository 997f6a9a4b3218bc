/**
 * Source: a garage's page on wheel balancing, read online in 2026 (mackertautomotive.com/autonet/wheel-balancing): a tire that turns
 * about 850 times a minute at 60 mph hits the road 14 times a second.
 */
import { millimeters } from '@bayledger/reckoning/units/measured'
import { imbalance } from '@bayledger/reckoning/wheel/imbalance'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'A garage’s page on wheel balancing', edition: '2026', certainty: 'read' }, () => {
  it('850 turns a minute at 60 mph are 14 a second', () => {
    const { hertz } = imbalance({
      grams: { inner: 7, outer: 0 },
      rimInches: 15,
      tireDiameter: millimeters(1_609_344 / 850 / Math.PI),
      milesPerHour: 60,
      on: 'car',
    })
    expect(hertz).toBeCloseTo(14, 0)
  })
})
