import * as fc from 'fast-check'
import { expect, it } from 'vitest'
import { circumference, diameterChange, overallDiameter, revolutionsPer, sidewallHeight } from './geometry.ts'
import { readTireSize } from './read-tire-size.ts'

const sizeOf = (text: string) => {
  const read = readTireSize(text)
  if (!read.ok || read.value.kind === 'heightless') throw new Error(`${text} says no diameter`)
  return read.value
}

it('a flotation size has the sidewall that its diameter leaves over the rim', () => {
  expect(sidewallHeight(sizeOf('33x12.50R15LT'))).toBeCloseTo(228.6, 9)
  expect(overallDiameter(sizeOf('33x12.50R15LT'))).toBeCloseTo(838.2, 9)
})

it('a change within 3 % either way is the same rolling size to the trade, and no more', () => {
  const from = sizeOf('40x12.5R15LT')
  expect(diameterChange(from, sizeOf('41.2x12.5R15LT'))).toEqual({
    percent: expect.closeTo(3, 9),
    withinTrade: true,
  })
  expect(diameterChange(from, sizeOf('41.21x12.5R15LT')).withinTrade).toBe(false)
  expect(diameterChange(from, sizeOf('38.81x12.5R15LT')).withinTrade).toBe(true)
  expect(diameterChange(from, sizeOf('38.79x12.5R15LT'))).toEqual({
    percent: expect.closeTo(-3.025, 9),
    withinTrade: false,
  })
})

it('a way rolled is circumference times revolutions, whatever the size', () => {
  const size = fc
    .tuple(
      fc.integer({ min: 11, max: 39 }),
      fc.integer({ min: 4, max: 20 }),
      fc.integer({ min: 10, max: 30 }),
    )
    .map(([tens, fifths, rim]) => sizeOf(`${tens}5/${fifths * 5}R${rim}`))
  fc.assert(
    fc.property(size, (one) => {
      expect(circumference(one) * revolutionsPer('mi', one)).toBeCloseTo(1_609_344, 3)
      expect(revolutionsPer('mi', one) / revolutionsPer('km', one)).toBeCloseTo(1.609344, 9)
      expect(diameterChange(one, one)).toEqual({ percent: 0, withinTrade: true })
    }),
    { seed: 20260112, numRuns: 500 },
  )
})
