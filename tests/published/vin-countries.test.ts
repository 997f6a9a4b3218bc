/** Source: countries of North America by the first character of the VIN; from memory, no copy of the table was read. */
import { vinRegion } from '@bayledger/reckoning/vehicle/region'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'ISO 3780', section: 'countries of North America', certainty: 'from memory' }, () => {
  it.each([
    ['1', 'United States'],
    ['2', 'Canada'],
    ['3', 'Mexico'],
    ['4', 'United States'],
    ['5', 'United States'],
  ])('%s is %s', (first, country) => {
    expect(vinRegion(`${first}ZZ00000000000000`)?.country).toBe(country)
  })
})
