/**
 * Sources: a repair shop's page on all-wheel drive (no more than 2/32 in of tread side to side, nor front to back on all-wheel
 * drive; with its case of 7/32 beside 10/32), and another repair shop's page (1–2/32 in, or 1/4 in around the tire), both read
 * online in 2026. Both send the reader to the vehicle's handbook.
 */
import { tiresApart } from '@bayledger/reckoning/tire/tread-apart'
import { lengthIn } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const at = (depth: number) => ({ tread: { value: depth, unit: '1/32 in' } as const, size: null })

published(
  {
    document: 'Two repair shops’ pages on tires and all-wheel drive',
    section: '2/32 in; 1/4 in around',
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it('7/32 beside 10/32 on one axle is too much', () => {
      expect(tiresApart({ LF: at(7), RF: at(10) })?.isTreadOver).toBe(true)
    })

    it('2/32 apart is not', () => {
      expect(tiresApart({ LF: at(8), RF: at(10) })?.isTreadOver).toBe(false)
    })

    it('about 1/4 in is about 6 mm', () => {
      expect(lengthIn('mm', { value: 0.25, unit: 'in' })).toBeCloseTo(6.35, 9)
    })
  },
)
