import { expect, it } from 'vitest'
import { centsTyped, quantityTyped } from './typed-amounts.ts'

it.each([
  ['12.50', 1_250],
  ['$1,234.5', 123_450],
  ['0', 0],
  ['100000', 10_000_000],
  ['100000.01', null],
  ['12.505', null],
  ['-3', null],
  ['', null],
  ['12,50', null],
])('%s dollars are %s cents', (typed, cents) => {
  expect(centsTyped(typed)).toBe(cents)
})

it.each([
  ['1', 100],
  ['2.5', 250],
  ['0.01', 1],
  ['0', null],
  ['1000', null],
  ['x', null],
])('%s is a quantity of %s hundredths', (typed, hundredths) => {
  expect(quantityTyped(typed)).toBe(hundredths)
})
