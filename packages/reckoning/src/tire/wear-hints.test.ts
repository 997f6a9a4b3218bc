import { expect, it } from 'vitest'
import { wearHint } from './wear-hints.ts'

it.each([
  ['even', [7, 7, 7]],
  ['even', [7, 6, 7]],
  ['even', [6, 7, 7]],
  ['even', [6, 5, 7]],
  ['even', [6, 8, 7]],
  ['middle', [7, 5, 7]],
  ['middle', [7, 5, 8]],
  ['both-shoulders', [5, 7, 5]],
  ['both-shoulders', [4, 8, 5]],
  ['inner-shoulder', [3, 6, 7]],
  ['inner-shoulder', [5, 7, 7]],
  ['outer-shoulder', [7, 6, 2]],
  ['outer-shoulder', [7, 4, 5]],
] as const)('%s: %j in 32nds, inner, middle, outer', (hint, [inner, middle, outer]) => {
  expect(wearHint({ inner, middle, outer })).toBe(hint)
})
