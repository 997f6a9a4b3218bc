/**
 * Source: a hardware maker's table of material strengths, read online in 2026 (mwcomponents.com): "Dry parts K=.2",
 * "Lubricated parts K=.15". K is found again from our forces as T / (F · D).
 */
import { clampForce, type ThreadSurface } from '@bayledger/reckoning/torque/clamp-force'
import { millimeters, newtonMeters } from '@bayledger/reckoning/units/measured'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rows: readonly (readonly [ThreadSurface, number, number])[] = [
  ['dry', 12, 0.2],
  ['dry', 14, 0.2],
  ['lubricated', 12, 0.15],
  ['lubricated', 14, 0.15],
]

published(
  {
    document: "A hardware maker's table of strengths",
    section: 'torque',
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it.each(rows)('a %s thread of %i mm has K %d', (surface, diameter, factor) => {
      const force = clampForce(newtonMeters(100), millimeters(diameter), surface).nominal
      expect(100 / (force * (diameter / 1_000))).toBeCloseTo(factor, 12)
    })
  },
)
