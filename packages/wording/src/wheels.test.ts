import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { expect, it } from 'vitest'
import { wheels } from './en/wheels.ts'
import { wheelList } from './wheels.ts'

it.each<[WheelPosition[], string]>([
  [[], ''],
  [['RR'], 'right rear'],
  [['LR', 'LF'], 'left front and left rear'],
  [['LR', 'RF', 'LF'], 'left front, right front and left rear'],
  [['LR', 'RF', 'LF', 'RR'], 'all four'],
  [['SP', 'RF', 'LF', 'RR'], 'left front, right front, right rear and spare'],
])('%j reads "%s"', (positions, words) => {
  expect(wheelList(wheels, positions)).toBe(words)
})
