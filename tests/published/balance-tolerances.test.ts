/**
 * Source: X. Wang (editor), Vehicle Noise and Vibration Refinement, Woodhead 2010, page 400, table 16.1, read: what may be left on each
 * side of a wheel: fast cars 5 g, standard cars 10 g, light trucks 30 g.
 */
import { millimeters } from '@bayledger/reckoning/units/measured'
import { type BalancedFor, imbalance } from '@bayledger/reckoning/wheel/imbalance'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rows: readonly [BalancedFor, number][] = [
  ['fast-car', 5],
  ['car', 10],
  ['light-truck', 30],
]

published(
  {
    document: 'X. Wang (editor), Vehicle Noise and Vibration Refinement',
    section: 'table 16.1',
    edition: '2010',
    certainty: 'read',
  },
  () => {
    it.each(rows)('%s: %i g a side', (on, grams) => {
      const left = (inner: number) =>
        imbalance({
          grams: { inner, outer: 0 },
          rimInches: 16,
          tireDiameter: millimeters(632),
          milesPerHour: 60,
          on,
        })
      expect(left(grams).isOver).toBe(false)
      expect(left(grams + 0.1).isOver).toBe(true)
    })
  },
)
