import { describe, expect, it } from 'vitest'
import { retorqueWindow } from './retorque.ts'

describe('the check of a torque after some miles', () => {
  it('is between 50 and 100 miles where the maker says nothing', () => {
    expect(retorqueWindow({ value: 48_210, unit: 'mi' }, null)).toEqual({
      from: { value: 48_260, unit: 'mi' },
      to: { value: 48_310, unit: 'mi' },
    })
  })

  it("is at the maker's own distance where there is one", () => {
    expect(retorqueWindow({ value: 48_210, unit: 'mi' }, { from: 25, to: 60 })).toMatchObject({
      from: { value: 48_235 },
      to: { value: 48_270 },
    })
  })

  it('is said in the unit of the odometer', () => {
    const { from, to } = retorqueWindow({ value: 1_000, unit: 'km' }, null)
    expect(from).toEqual({ value: expect.closeTo(1_080.4672, 6), unit: 'km' })
    expect(to).toEqual({ value: expect.closeTo(1_160.9344, 6), unit: 'km' })
  })
})
