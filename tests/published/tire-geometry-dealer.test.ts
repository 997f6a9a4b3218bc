/**
 * Source: a tire dealer's page on sizes, read online in 2026, with 245/55R18 worked: sidewall 245 × 0.55 = 134.75 mm,
 * diameter 2 × 134.75 + 18 × 25.4 = 726.7 mm. The inches that it prints for it, 28.63, are wrong: 726.7 mm are 28.61.
 */
import { overallDiameter, sidewallHeight } from '@bayledger/reckoning/tire/geometry'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { lengthIn } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const read = readTireSize('245/55R18')
if (!read.ok || read.value.kind === 'heightless') throw new Error('245/55R18 says a diameter')
const size = read.value

published(
  {
    document: 'A tire dealer’s page on sizes',
    section: '245/55R18 worked',
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it('the sidewall has 134.75 mm', () => {
      expect(sidewallHeight(size)).toBeCloseTo(134.75, 9)
    })

    it('the diameter is 726.7 mm', () => {
      expect(overallDiameter(size)).toBeCloseTo(726.7, 9)
    })

    it('which are 28.61 in, and not the 28.63 printed', () => {
      expect(lengthIn('in', { value: overallDiameter(size), unit: 'mm' })).toBeCloseTo(28.61, 2)
    })
  },
)
