import { expect, it } from 'vitest'
import { loadOfIndex, poundsOfIndex } from './load-index.ts'

it.each([59, 141, 0, -1, 91.5, Number.NaN])(
  'load index %d is not in the table, and is never made up',
  (index) => {
    expect(loadOfIndex(index)).toBeNull()
    expect(poundsOfIndex(index)).toBeNull()
  },
)

it('each load index carries more than the one before, by a twentieth at most', () => {
  for (let index = 61; index <= 140; index += 1) {
    const ratio = (loadOfIndex(index) ?? 0) / (loadOfIndex(index - 1) ?? 0)
    expect(ratio).toBeGreaterThan(1.01)
    expect(ratio).toBeLessThan(1.05)
  }
})
