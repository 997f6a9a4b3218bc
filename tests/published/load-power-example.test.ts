/**
 * The trade's own worked example of why no formula decides a load, computed: load index 106 XL (950 kg at 290 kPa)
 * instead of 102 (850 kg at 250 kPa), both at 227.5 kPa; powers of 0.5 and 0.8 are both in use in standards (from
 * memory). And load index 98 instead of 102, which is refused by its index.
 */
import { type LoadCheckOf, loadCheck } from '@bayledger/reckoning/tire/load-check'
import { loadOfIndex } from '@bayledger/reckoning/tire/load-index'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const carries = (index: number, ratedAt: number, power: number) =>
  Math.round((loadOfIndex(index) ?? Number.NaN) * (227.5 / ratedAt) ** power)
const checkOf = (fittedIndex: number, needed: number, carried: number): LoadCheckOf => {
  const tire = (loadIndex: number, value: number) =>
    ({ passenger: true, loadIndex, speed: 'H', tableLoad: { value, unit: 'kg' } }) as const
  return {
    vehicle: 'car',
    newOnLabel: false,
    original: tire(102, needed),
    fitted: { ...tire(fittedIndex, carried), sidewallMaximum: { value: 340, unit: 'kPa' } },
    chosen: { value: 227.5, unit: 'kPa' },
  }
}

published(
  {
    document: 'Worked example of the trade',
    section: 'the power turns the answer around',
    certainty: 'computed from definition',
  },
  () => {
    it.each([
      [102, 250, 0.5, 811],
      [102, 250, 0.8, 788],
      [106, 290, 0.5, 841],
      [106, 290, 0.8, 782],
    ])('load index %i, rated at %i kPa, by the power %d: %i kg', (index, ratedAt, power, load) => {
      expect(carries(index, ratedAt, power)).toBe(load)
    })

    it.each([
      [811, 841, 'passes'],
      [788, 782, 'refuses'],
    ] as const)('with table values of %i kg needed and %i kg carried it %s', (needed, carried, outcome) => {
      expect(loadCheck(checkOf(106, needed, carried)).outcome).toBe(outcome)
    })

    it('a lower load index is refused, whatever the table says', () => {
      expect(loadCheck(checkOf(98, 788, 800))).toMatchObject({ outcome: 'refuses', reasons: ['lower-index'] })
    })
  },
)
