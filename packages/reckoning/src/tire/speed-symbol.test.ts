import { expect, it } from 'vitest'
import { isSlower, isSpeedSymbol, speedOfSymbol } from './speed-symbol.ts'

it.each(['A', 'A0', 'A9', 'I', 'O', 'X', 'Z', 'h', '', 'toString', '(W)'])(
  '%s is no speed symbol',
  (text) => {
    expect(isSpeedSymbol(text)).toBe(false)
  },
)

it.each(['A1', 'A8', 'B', 'H', '(Y)'])('%s is a speed symbol', (text) => {
  expect(isSpeedSymbol(text)).toBe(true)
})

it('H is faster than U and slower than V, and no symbol is slower than itself', () => {
  expect([isSlower('U', 'H'), isSlower('H', 'U'), isSlower('H', 'V'), isSlower('H', 'H')]).toEqual([
    true,
    false,
    true,
    false,
  ])
  expect(isSlower('G', 'J')).toBe(true)
  expect(isSlower('Y', '(Y)')).toBe(true)
  expect(isSlower('(Y)', 'Y')).toBe(false)
})

it('only (Y) means more than its figure', () => {
  expect(speedOfSymbol('(Y)')).toEqual({ kilometersPerHour: 300, above: true })
  expect(speedOfSymbol('Y')).toEqual({ kilometersPerHour: 300, above: false })
})
