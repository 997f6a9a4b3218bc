/**
 * Sources, read online in 2026: a wheel seller's page on measuring rims (4wdbits.co.nz/rimmeasurements.aspx): offset = backspace −
 * width / 2, where the backspace is from the hub's face to the inner edge; a page on rim offset (toukey.com): a lower offset moves
 * the wheel out, and 6 mm are about 1/4 in.
 */
import { lengthIn } from '@bayledger/reckoning/units/length-units'
import { millimeters } from '@bayledger/reckoning/units/measured'
import { offsetShift } from '@bayledger/reckoning/wheel/offset-shift'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rim = (widthInches: number, backspaceInches: number) => ({
  widthInches,
  offset: millimeters(25.4 * (backspaceInches - widthInches / 2)),
})

published({ document: 'Two pages on the offset of rims', edition: '2026', certainty: 'read' }, () => {
  it.each([
    [7, 5.25, 8, 5.75],
    [7, 5.25, 8, 4.5],
    [10, 4.5, 7, 5],
  ])(
    '%f in with a backspace of %f in, then %f in with %f in: the inner edge moves by their difference',
    (width, back, otherWidth, otherBack) => {
      const { innerEdge, outerEdge } = offsetShift(rim(width, back), rim(otherWidth, otherBack))
      expect(innerEdge).toBeCloseTo(25.4 * (otherBack - back), 9)
      expect(innerEdge + outerEdge).toBeCloseTo(25.4 * (otherWidth - width), 9)
    },
  )

  it('a lower offset moves out; 6 mm are about 1/4 in', () => {
    const { out } = offsetShift(
      { widthInches: 7, offset: millimeters(45) },
      { widthInches: 7, offset: millimeters(39) },
    )
    expect(out).toBe(6)
    expect(lengthIn('in', { value: out, unit: 'mm' })).toBeCloseTo(0.25, 1)
  })
})
