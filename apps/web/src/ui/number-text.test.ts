import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isFull, nudge, numberFrom, type PadKey, type PadLimits, press } from './number-text.ts'

const psi = { whole: 3, decimals: 1 }
const type = (keys: PadKey[], limits: PadLimits = psi) =>
  keys.reduce((text, key) => press(text, key, limits), '')

describe('the number pad’s text', () => {
  it('is what its keys spell', () => {
    expect(type(['3', '4', '.', '5'])).toBe('34.5')
  })

  it('is full with its last decimal, never without a point', () => {
    expect(
      [type(['3', '1']), type(['3', '1', '.']), type(['3', '1', '.', '6'])].map((text) => isFull(text, psi)),
    ).toEqual([false, false, true])
    expect(isFull('3.1', { whole: 3, decimals: 2 })).toBe(false)
    expect(isFull('123', { whole: 3, decimals: 0 })).toBe(false)
  })

  it('takes no second point and no digit beyond its limits', () => {
    expect(type(['3', '.', '.', '5', '7'])).toBe('3.5')
    expect(type(['1', '2', '3', '4'])).toBe('123')
    expect(type(['1', '.'], { whole: 3, decimals: 0 })).toBe('1')
  })

  it('begins a bare point with a zero and drops a leading zero', () => {
    expect(type(['.', '5'])).toBe('0.5')
    expect(type(['0', '7'])).toBe('7')
    expect(type(['sign', '0', '7'])).toBe('-7')
  })

  it('of a code keeps its leading zeros', () => {
    expect(type(['0', '0', '7', '1', '2'], { whole: 4, decimals: 0, leadingZeros: true })).toBe('0071')
  })

  it('turns its sign and back', () => {
    expect(type(['5', 'sign'])).toBe('-5')
    expect(type(['5', 'sign', 'sign'])).toBe('5')
  })

  it('forgets its last key, or all of them', () => {
    expect(type(['3', '4', 'back'])).toBe('3')
    expect(type(['3', '4', 'clear'])).toBe('')
    expect(type(['back'])).toBe('')
  })

  it('moves by half a unit', () => {
    expect(nudge('34.5', 0.5, psi)).toBe('35.0')
    expect(nudge('34', -0.5, psi)).toBe('33.5')
    expect(nudge('', 0.5, psi)).toBe('0.5')
    expect(nudge('999.5', 0.5, psi)).toBe('999.5')
  })

  it('is no number while it is unfinished or not numeric at all', () => {
    expect(['', '-', '.', '3,5', '3 5', '1e3', 'abc'].map(numberFrom)).toEqual(Array(7).fill(null))
    expect(['34.', '.5', ' 35 ', '−5'].map(numberFrom)).toEqual([34, 0.5, 35, -5])
  })

  it('is no number where it is longer than any figure', () => {
    expect(['1234567890', '0.1234567', '9'.repeat(400)].map(numberFrom)).toEqual(Array(3).fill(null))
    expect(['123456789', '0.123456'].map(numberFrom)).toEqual([123_456_789, 0.123456])
  })

  it('never throws, and what it is read as is a number that reads the same again', () => {
    const digits = fc.string({ unit: fc.constantFrom(...'0123456789.,-−+e '), maxLength: 24 })
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }), digits), (text) => {
        const number = numberFrom(text)
        if (number === null) return
        expect(Number.isFinite(number)).toBe(true)
        expect(numberFrom(String(number))).toBe(number === 0 ? 0 : number)
      }),
      { seed: 20260112, numRuns: 10_000 },
    )
  })

  it('never spells what is no number, whatever is pressed', () => {
    const keys = fc.array(fc.constantFrom<PadKey>('0', '1', '9', '.', 'sign', 'back', 'clear'))
    fc.assert(
      fc.property(keys, (pressed) => {
        const text = type(pressed)
        return text === '' || text === '-' || numberFrom(text) !== null
      }),
      { seed: 20260112 },
    )
  })
})
