import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Millimeters, millimeters, type NewtonMeters, newtonMeters } from '../units/measured.ts'
import { adapterReading, adapterTorque, type OffsetAdapter } from './offset-adapter.ts'

const adapter = (handle: number, offset: number, degrees = 0): OffsetAdapter => ({
  handle: handle as Millimeters,
  offset: offset as Millimeters,
  degrees,
})
const wanted = newtonMeters(120)

const reads = (of: OffsetAdapter): NewtonMeters => {
  const reading = adapterReading(wanted, of, 'other')
  if (!reading.ok) throw new Error(reading.do)
  return reading.value
}

describe('a wrench with an offset adapter', () => {
  it('reads less than it gives where the adapter points ahead, more where it points back', () => {
    expect(reads(adapter(300, 100))).toBeCloseTo(90, 9)
    expect(reads(adapter(300, -60))).toBeCloseTo(150, 9)
  })

  it('needs no correction across, and half the offset at 60 degrees', () => {
    expect(reads(adapter(300, 100, 90))).toBeCloseTo(120, 9)
    expect(reads(adapter(300, 100, 60))).toBeCloseTo(120 / (350 / 300), 9)
  })

  it('is refused on a road wheel, whatever the adapter', () => {
    expect(adapterReading(wanted, adapter(300, 100, 90), 'road-wheel')).toMatchObject({
      ok: false,
      fault: 'road-wheel',
      found: 'an offset adapter on a road wheel',
      allowed: expect.stringContaining('a socket'),
      do: expect.stringContaining("the vehicle maker's figure itself"),
    })
  })

  it.each([
    [adapter(0, 50), 'handle'],
    [adapter(-1, 50), 'handle'],
    [adapter(Number.NaN, 50), 'handle'],
    [adapter(Number.POSITIVE_INFINITY, 50), 'handle'],
    [adapter(300, 50, -1), 'angle'],
    [adapter(300, 50, 91), 'angle'],
    [adapter(300, 50, Number.NaN), 'angle'],
    [adapter(300, -300), 'offset'],
    [adapter(300, Number.NaN), 'offset'],
    [adapter(300, Number.NEGATIVE_INFINITY, 90), 'offset'],
  ])('of %o is refused for its %s, either way round', (odd, fault) => {
    expect(adapterReading(wanted, odd, 'other')).toMatchObject({ ok: false, fault })
    expect(adapterTorque(wanted, odd)).toMatchObject({ ok: false, fault })
  })

  it.each([
    [adapter(-1, 50), 'a handle of -1 mm', 'more than 0 mm', 'from the middle of the hand grip'],
    [adapter(300, 50, 91), '91 degrees', '0 (in line) to 90 (across)', 'the offset is under zero'],
    [adapter(300, -310), 'an offset of -310 mm', 'more than -300 mm', 'from the square drive'],
  ])(
    'of %o is refused with what was found, what is allowed and what to measure',
    (odd, found, allowed, action) => {
      const refusal = adapterReading(wanted, odd, 'other')
      expect(refusal).toMatchObject({ ok: false, found, allowed: expect.stringContaining(allowed) })
      expect(refusal).toMatchObject({ do: expect.stringContaining(action) })
    },
  )

  it('gives what was wanted: one way is the inverse of the other', () => {
    const length = fc.double({ min: 50, max: 900, noNaN: true }).map(millimeters)
    fc.assert(
      fc.property(
        length,
        fc.double({ min: -0.9, max: 2, noNaN: true }),
        fc.integer({ min: 0, max: 90 }),
        fc.double({ min: 1, max: 400, noNaN: true }).map(newtonMeters),
        (handle, ratio, degrees, torque) => {
          const of = { handle, offset: millimeters(handle * ratio), degrees }
          const reading = adapterReading(torque, of, 'other')
          if (!reading.ok) throw new Error(reading.do)
          const given = adapterTorque(reading.value, of)
          expect(given.ok && given.value).toBeCloseTo(torque, 8)
        },
      ),
      { seed: 20260112 },
    )
  })
})
