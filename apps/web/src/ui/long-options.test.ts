import { expect, it } from 'vitest'
import { optionsFor } from './long-options.ts'

const options = [
  { value: 'America/New_York', label: 'New York, Eastern Time' },
  { value: 'America/Detroit', label: 'Detroit, Eastern Time' },
  { value: 'Europe/Berlin', label: 'Europe/Berlin' },
]
const found = (searched: string) => optionsFor(searched, options).map(({ value }) => value)

it('keeps the options in which every word is found, whatever the case and the order', () => {
  expect(found('eastern')).toEqual(['America/New_York', 'America/Detroit'])
  expect(found('  time york ')).toEqual(['America/New_York'])
  expect(found('america/new_y')).toEqual(['America/New_York'])
  expect(found('')).toHaveLength(3)
  expect(found('nowhere')).toEqual([])
})
