import { expect, it } from 'vitest'
import { timeZones } from './time-zones.ts'

it('are all that the browser knows, each once, those of the United States first', () => {
  expect(timeZones.map(({ value }) => value).toSorted()).toEqual(
    Intl.supportedValuesOf('timeZone').toSorted(),
  )
  expect(timeZones[0]).toEqual({
    value: 'America/New_York',
    label: 'New York, Eastern Time',
    group: 'United States',
  })
  expect(timeZones.slice(1, 7).map(({ label }) => label.split(',')[0])).toEqual([
    'Chicago',
    'Denver',
    'Phoenix',
    'Los Angeles',
    'Anchorage',
    'Honolulu',
  ])
  const groups = timeZones.map(({ group }) => group)
  expect(groups.lastIndexOf('United States')).toBeLessThan(groups.indexOf('Elsewhere'))
  // zone.tab of the IANA time zone database, 2025b: 29 of the United States, 5 of its territories.
  expect(groups.filter((group) => group === 'United States')).toHaveLength(34)
})
