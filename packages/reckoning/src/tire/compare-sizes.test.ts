import { describe, expect, it } from 'vitest'
import { compareSizes, isAsNamed } from './compare-sizes.ts'
import { readTireSize } from './read-tire-size.ts'

const size = (text: string) => {
  const read = readTireSize(text)
  if (!read.ok) throw new Error(read.found)
  return read.value
}
const compared = (bySheet: string, onTire: string) => compareSizes(size(bySheet), size(onTire))

describe('the size on a tire', () => {
  it.each([
    ['215/60R16 95H', '215/60R16 95H'],
    ['215/60R16', '215/60 R16 95H XL'],
    ['215/60R16 95H', '215/60R16 99V XL'],
    ['275/40R19', '275/40ZR19 (101Y)'],
  ])('%s by the sheet is %s on the tire', (bySheet, onTire) => {
    expect(isAsNamed(compared(bySheet, onTire))).toBe(true)
  })

  it.each([
    ['215/60R16 95H', '205/60R16 95H', { isOtherSize: true, loadIndexApart: 0, isSlower: false }],
    ['215/60R16 95H', '215/60R17 95H', { isOtherSize: true }],
    ['P215/65R15 95H', '215/65R15 96H', { isOtherSize: true, loadIndexApart: 1 }],
    ['215/60R16 95H', '215/60R16 94H', { isOtherSize: false, loadIndexApart: -1 }],
    ['215/60R16 95H', '215/60R16 95T', { isSlower: true }],
    // H is faster than U.
    ['215/60R16 95H', '215/60R16 95U', { isSlower: true }],
    ['LT235/85R16 120/116R E', '235/85R16 120S', { isOtherSize: true }],
  ])('%s by the sheet is not %s on the tire', (bySheet, onTire, differs) => {
    expect(compared(bySheet, onTire)).toMatchObject(differs)
    expect(isAsNamed(compared(bySheet, onTire))).toBe(false)
  })

  it('is not compared in what one side does not say', () => {
    expect(compared('215/60R16', '215/60R16 90S')).toEqual({
      isOtherSize: false,
      loadIndexApart: null,
      isSlower: null,
    })
  })
})
