import { expect, it } from 'vitest'
import { isAsTyped, printedFrom, printedIn } from './printed-pressure.ts'

it('a label that prints 35 psi and 240 kPa keeps both; neither is computed from the other', () => {
  const printed = { psi: 35, kPa: 240 }
  expect(printedIn('psi', printed)).toEqual({ value: 35, unit: 'psi' })
  expect(printedIn('kPa', printed)).toEqual({ value: 240, unit: 'kPa' })
})

it('a label that prints no kPa has none', () => {
  expect(printedIn('kPa', { psi: 35, kPa: null })).toBeNull()
})

it('a label that prints kPa or bar alone keeps what was typed, and its psi is computed from it to a tenth', () => {
  // 1 psi is 6.894757293168 kPa (from definition): 230 / 6.894757293168 = 33.3587, 250 / 6.894757293168 = 36.2595.
  expect(printedFrom({ value: 230, unit: 'kPa' })).toEqual({
    psi: 33.4,
    kPa: 230,
    typed: { value: 230, unit: 'kPa' },
  })
  expect(printedFrom({ value: 2.5, unit: 'bar' })).toEqual({
    psi: 36.3,
    kPa: null,
    typed: { value: 2.5, unit: 'bar' },
  })
  expect(printedFrom({ value: 33, unit: 'psi' })).toEqual({ psi: 33, kPa: null })
})

it('a psi figure that is not what the label comes to is found out; one that the label prints is never questioned', () => {
  expect(isAsTyped(printedFrom({ value: 2.3, unit: 'bar' }))).toBe(true)
  expect(isAsTyped({ psi: 35, kPa: null, typed: { value: 2.3, unit: 'bar' } })).toBe(false)
  expect(isAsTyped({ psi: 35, kPa: 240 })).toBe(true)
})
