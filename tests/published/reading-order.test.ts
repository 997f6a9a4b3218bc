/** Our convention, after common practice without a source: around the vehicle from the driver's wheel on, the spare last. */
import { inReadingOrder, readingOrder } from '@bayledger/reckoning/wheels'
import { expect, it } from 'vitest'
import { ownConvention, published } from './published.ts'

published({ document: 'Order in which sensors are read', certainty: ownConvention }, () => {
  it.each(['LF', 'RF', 'RR', 'LR', 'SP'].map((wheel, index) => [index + 1, wheel]))(
    'number %i is %s',
    (place, wheel) => {
      expect(readingOrder[Number(place) - 1]).toBe(wheel)
    },
  )

  it('wheels named in any order are put into it', () => {
    expect(inReadingOrder(['SP', 'LR', 'LF', 'RR', 'RF'])).toEqual(['LF', 'RF', 'RR', 'LR', 'SP'])
  })
})
