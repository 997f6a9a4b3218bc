import { describe, expect, it } from 'vitest'
import { Distance, Pressure, PrintedPressure, Temperature, Torque } from './quantity.ts'

const bounds = [
  ['a pressure', Pressure, ['psi', 'kPa', 'bar'], -140, 2_800],
  ['a torque', Torque, ['lbf·ft', 'lbf·in', 'N·m'], 0, 2_000],
  ['a temperature', Temperature, ['F', 'C'], -150, 600],
  ['a distance', Distance, ['mi', 'km'], 0, 2_000_000],
] as const

describe('a figure as entered', () => {
  it.each(bounds)(
    '%s is taken in each of its units, from its least to its most',
    (_what, schema, units, least, most) => {
      for (const unit of units) {
        for (const value of [least, most, (least + most) / 2])
          expect(schema.safeParse({ value, unit })).toMatchObject({ success: true, data: { value, unit } })
        for (const value of [least - 1, most + 1, Number.NaN, '1', null])
          expect(schema.safeParse({ value, unit }).success).toBe(false)
      }
      for (const unit of ['', 'Pa', 'm', null])
        expect(schema.safeParse({ value: least, unit }).success).toBe(false)
      expect(schema.safeParse({ value: least, unit: units[0], rounded: 1 }).success).toBe(false)
    },
  )
})

describe('a printed pressure', () => {
  it('keeps both figures as the label prints them, or the one that it prints', () => {
    expect(PrintedPressure.parse({ psi: 35, kPa: 240 })).toEqual({ psi: 35, kPa: 240 })
    expect(PrintedPressure.parse({ psi: 35, kPa: null })).toEqual({ psi: 35, kPa: null })
    expect(PrintedPressure.safeParse({ psi: 35 }).success).toBe(false)
  })

  it.each([
    [10, 70, true],
    [120, 830, true],
    [9.9, 240, false],
    [120.1, 240, false],
    [35, 69, false],
    [35, 831, false],
  ])('of %s psi and %s kPa is taken: %s', (psi, kPa, taken) => {
    expect(PrintedPressure.safeParse({ psi, kPa }).success).toBe(taken)
  })
})
