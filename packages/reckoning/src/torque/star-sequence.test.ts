import { describe, expect, it } from 'vitest'
import { SheetStuds } from '../sheet.ts'
import { sequenceDoubt } from './sequence-rule.ts'
import { hasStarSequence, starSequence, tighteningOrder } from './star-sequence.ts'

const counts = [3, 4, 5, 6, 7, 8, 10]

describe('a star sequence', () => {
  it.each(counts)('of %i has what makes an order right', (studs) => {
    expect(hasStarSequence(studs)).toBe(true)
    expect(sequenceDoubt(starSequence(studs), studs)).toBeNull()
  })

  it.each(counts)('of %i begins nearest the valve', (studs) => {
    expect(starSequence(studs)[0]).toBe(1)
  })

  it.each([0, 2, 9, 11])('does not exist for %i fasteners', (studs) => {
    expect(hasStarSequence(studs)).toBe(false)
    expect(() => starSequence(studs)).toThrow(
      new RangeError(
        `no star for ${studs} fasteners: no source gives one, and none is made up; the vehicle maker's own order is needed`,
      ),
    )
  })

  it("gives way to the vehicle maker's own", () => {
    expect(tighteningOrder({ count: 4, makersSequence: [1, 3, 4, 2] })).toEqual([1, 3, 4, 2])
    expect(tighteningOrder({ count: 4, makersSequence: null })).toEqual([1, 3, 2, 4])
  })
})

describe('the fasteners on a specification sheet', () => {
  const studs = (count: number, makersSequence: number[] | null) =>
    SheetStuds.safeParse({
      count,
      thread: 'M12×1.5',
      fastener: 'nut',
      seat: 'cone',
      torque: { value: 80, unit: 'lbf·ft' },
      handTurns: 8,
      makersSequence,
      lockingFastener: false,
      retorqueMiles: { from: 50, to: 100 },
    })

  it.each([
    [5, null],
    [4, [1, 3, 4, 2]],
    [9, [1, 4, 7, 2, 5, 8, 3, 6, 9]],
  ])('%i with the order %j are taken', (count, order) => {
    expect(studs(count, order).success).toBe(true)
  })

  it.each([
    [5, [1, 2, 3, 4, 5]],
    [5, [1, 3, 5, 2]],
    [5, [1, 3, 5, 2, 4, 1, 3, 5, 2, 4]],
  ])('%i with the order %j are not', (count, order) => {
    const read = studs(count, order)
    expect(read.error?.issues).toMatchObject([
      { path: ['makersSequence'], message: expect.stringMatching(/^the order of tightening names each/) },
    ])
  })

  it("nine without the vehicle maker's order are not, and the reason is given", () => {
    expect(studs(9, null).error?.issues).toMatchObject([
      {
        path: ['makersSequence'],
        message: "no source gives an order for this many fasteners: enter the vehicle maker's own",
      },
    ])
  })
})
