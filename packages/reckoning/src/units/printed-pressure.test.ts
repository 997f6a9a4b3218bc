import { expect, it } from 'vitest'
import { printedIn } from './printed-pressure.ts'

it('a label that prints 35 psi and 240 kPa keeps both; neither is computed from the other', () => {
  const printed = { psi: 35, kPa: 240 }
  expect(printedIn('psi', printed)).toEqual({ value: 35, unit: 'psi' })
  expect(printedIn('kPa', printed)).toEqual({ value: 240, unit: 'kPa' })
})

it('a label that prints no kPa has none', () => {
  expect(printedIn('kPa', { psi: 35, kPa: null })).toBeNull()
})
