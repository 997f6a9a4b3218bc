/**
 * Worked by hand from T · L / (L + E · cos a). One online copy of the slanted case shows a product where the sum L + E
 * · cos a is meant; the sum is right, as its value across the wrench shows.
 */
import { expect, it } from 'vitest'
import { inches, readingFor } from './adapter-lengths.ts'
import { published } from './published.ts'

published(
  { document: 'Offset adapters', section: 'T · L / (L + E · cos a)', certainty: 'computed from definition' },
  () => {
    it.each([
      [80, 0, 68.57],
      [80, 45, 71.57],
      [80, 90, 80],
      [100, 0, 85.71],
      [100, 60, 92.31],
    ])('%i with 18 in and 3 in at %i degrees is applied at %d', (wanted, degrees, reading) => {
      expect(readingFor(wanted, inches(18, 3, degrees))).toBeCloseTo(reading, 2)
    })
  },
)
