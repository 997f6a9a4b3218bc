import { expect, it } from 'vitest'
import { tirePrints } from './en/tire-prints.ts'

it.each([
  [{ days: 3, fullYears: 0, atLeast: false }, 'under a year'],
  [{ days: 400, fullYears: 1, atLeast: false }, '1 year'],
  [{ days: 800, fullYears: 2, atLeast: false }, '2 years'],
  [{ days: 10_700, fullYears: 29, atLeast: true }, 'at least 29 years, decade unknown'],
])('the age of a tire is said as people say it', (age, said) => {
  expect(tirePrints.age(age)).toBe(said)
})
