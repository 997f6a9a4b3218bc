/**
 * Source: ISO 3780, regions by the first character of the VIN, as a public implementation restates them; the standard
 * itself was not read.
 */
import { vinRegion } from '@bayledger/reckoning/vehicle/region'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const regions = [
  ['ABCDEFGH', 'Africa'],
  ['JKLMNPR', 'Asia'],
  ['STUVWXYZ', 'Europe'],
  ['12345', 'North America'],
  ['67', 'Oceania'],
  ['890', 'South America'],
] as const
const rows = regions.flatMap(([characters, region]) =>
  [...characters].map((first) => [first, region] as const),
)

published({ document: 'ISO 3780', section: 'regions', certainty: 'quoted' }, () => {
  it.each(rows)('%s is %s', (first, region) => {
    expect(vinRegion(`${first}ZZ00000000000000`)?.region).toBe(region)
  })

  it.each([...'IOQ'])('%s begins no VIN', (first) => {
    expect(vinRegion(`${first}ZZ00000000000000`)).toBeNull()
  })
})
