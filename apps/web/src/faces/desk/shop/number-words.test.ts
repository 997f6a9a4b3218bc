import type { Bar } from '@bayledger/contract/numbers'
import { describe, expect, it } from 'vitest'
import { barLengths, barWords, errorWords, shareWords } from './number-words.ts'

const bar = (change: Partial<Bar>): Bar => ({
  ...{ label: 'A', count: 3, of: null, minutes: null, orders: [] },
  ...change,
})

describe('what a bar says', () => {
  it('is a count, a share in numbers while it is small, and a percentage from ten on', () => {
    expect(barWords(bar({}))).toBe('3')
    expect(barWords(bar({ count: 3, of: 4 }))).toBe('3 of 4')
    expect(shareWords(8, 9)).toBe('8 of 9')
    expect(shareWords(7, 10)).toBe('70 % of 10')
  })

  it('is the middle of some minutes with those between which half of them are', () => {
    const minutes = { middle: 14, from: 11, until: 18.5 }
    expect(barWords(bar({ count: 8, minutes }))).toBe('14 min, half of 8 from 11 to 19')
    expect(barWords(bar({ count: 9, minutes: { middle: 4.5, from: 3.2, until: 9.9 } }))).toBe(
      '4.5 min, half of 9 from 3.2 to 9.9',
    )
    expect(barWords(bar({ count: 2, minutes }))).toBe('14 min, seen 2 times')
    expect(barWords(bar({ count: 1, minutes }))).toBe('14 min, seen once')
  })

  it('is drawn against the longest one, a share against the whole', () => {
    expect(barLengths([bar({ count: 2 }), bar({ count: 8 })]).map((one) => one.bar)).toEqual([0.25, 1])
    expect(barLengths([bar({ count: 3, of: 4 })])[0]?.bar).toBe(0.75)
    const minutes = { middle: 10, from: 5, until: 20 }
    expect(barLengths([bar({ minutes })])).toEqual([{ bar: 0.5, line: { from: 0.25, until: 1 } }])
    expect(barLengths([bar({ count: 0 })])[0]?.bar).toBe(0)
  })
})

describe('what ready times were worth', () => {
  it('is said in a sentence', () => {
    expect(errorWords({ count: 0, medianMinutes: null, within15: 0 })).toMatch(/^No order/)
    expect(errorWords({ count: 4, medianMinutes: 11.5, within15: 3 })).toBe(
      'Half of them were off by 12 min or less; 3 of 4 by 15 min or less.',
    )
  })
})
