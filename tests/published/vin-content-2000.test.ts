/**
 * Source: 49 CFR 565.6 as of October 2000, read at vehicleidentificationnumbers.com (the same in 565.25(b), read at
 * lexfed.com): the third and fourth characters of the second section (places 6 and 7) shall be numeric.
 */
import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: '49 CFR 565.6', section: '(b)', edition: 'October 2000', certainty: 'read' }, () => {
  it.each([...'0123456789'])('%s at place 7 is of the years to 2009', (seventh) => {
    expect(modelYear(`1ZZ000${seventh}00A0000000`)).toBe(1980)
  })
})
