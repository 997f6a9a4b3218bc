import { expect, it } from 'vitest'
import { sameMark } from './same-mark.ts'

it('Plates are the same whatever stands between, and with O for 0 and I for 1', () => {
  expect(sameMark('OIL 1007', 'o1l-i0o7')).toBe(true)
  expect(sameMark('OIL 1007', 'OIL 100')).toBe(false)
  expect(sameMark(null, 'OIL 1007')).toBe(false)
  expect(sameMark('', ' ')).toBe(false)
})
